import { create } from 'zustand';

interface Notices {
  /** The last thing that went wrong or was done; empty when it was put away. */
  readonly text: string;
  readonly tell: (text: string) => void;
}

/** What the program has to say that belongs to no field: shown in the status line until the next one. */
export const useNotices = create<Notices>()((set) => ({
  text: '',
  tell: (text) => set({ text }),
}));
