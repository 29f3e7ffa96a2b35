import { stat } from 'node:fs/promises';

/** Whether anything is there. */
export const exists = (path: string): Promise<boolean> =>
  stat(path).then(
    () => true,
    () => false,
  );
