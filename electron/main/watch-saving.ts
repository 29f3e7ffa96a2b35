import type { Documents } from '../messages/ports.ts';

/** Tells when a save came to nothing, by the user's choice or by a fault. */
export const watchSaving = (documents: Documents, notSaved: () => void): Documents => ({
  ...documents,
  async save(...request) {
    let saved = false;
    try {
      const file = await documents.save(...request);
      saved = file !== null && !('changedOutside' in file);
      return file;
    } finally {
      if (!saved) notSaved();
    }
  },
});
