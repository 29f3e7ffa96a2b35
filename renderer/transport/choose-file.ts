import { ORDER_EXTENSIONS, PROJECT_EXTENSIONS } from '../../shared/document-kinds.ts';

const ACCEPT = [...PROJECT_EXTENSIONS, ...ORDER_EXTENSIONS].map((extension) => `.${extension}`).join(',');

/** Opens the browser's file chooser; null when nothing is chosen. Works only from a click or a key press. */
export const chooseFile = (): Promise<File | null> =>
  new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = ACCEPT;
    input.addEventListener('change', () => resolve(input.files?.[0] ?? null));
    input.addEventListener('cancel', () => resolve(null));
    input.click();
  });
