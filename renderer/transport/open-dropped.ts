import type { Reply } from '../../shared/contract/messages.ts';
import { bridge } from './bridge.ts';
import { openFile } from './send-to-host.ts';

/** Opens a file that was dropped on the window. */
export const openDropped = (file: File): Promise<Reply<'document.open'>> =>
  (bridge()?.openDropped ?? openFile)(file);

/**
 * Listens for files dropped anywhere on the window and hands over the first of each drop. Returns the way to
 * end it. Without it the browser would leave the page and show the file.
 */
export function listenForDrops(dropped: (file: File) => void): () => void {
  const hover = (event: DragEvent): void => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    if (event.dataTransfer !== null) event.dataTransfer.dropEffect = 'copy';
  };
  const drop = (event: DragEvent): void => {
    if (!carriesFiles(event)) return;
    event.preventDefault();
    const file = event.dataTransfer?.files[0];
    if (file !== undefined) dropped(file);
  };
  window.addEventListener('dragover', hover);
  window.addEventListener('drop', drop);
  return () => {
    window.removeEventListener('dragover', hover);
    window.removeEventListener('drop', drop);
  };
}

const carriesFiles = ({ dataTransfer }: DragEvent): boolean => dataTransfer?.types.includes('Files') ?? false;
