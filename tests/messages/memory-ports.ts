import type { Ports, Snapshot } from '../../electron/messages/ports.ts';

/** Surroundings in memory that note what was asked of them. */
export function memoryPorts(change: Partial<Ports> = {}) {
  const calls: string[] = [];
  let kept: Snapshot | null = null;
  const ports: Ports = {
    documents: {
      open: async (source) => {
        calls.push(`open ${source}`);
        return source === null ? null : { name: 'a.csv', handle: 'h', bytes: Buffer.from('cabinet\n') };
      },
      save: async (handle, name, text) => {
        calls.push(`save ${handle} ${name} ${text}`);
        return { name, handle: 'h' };
      },
      recent: async () => [{ handle: 'h', name: 'a.csv', folder: '/home' }],
      changed: ({ unsaved, name }) => void calls.push(`changed ${unsaved} ${name}`),
    },
    recovery: {
      keep: async (_tab, snapshot) => void (kept = snapshot),
      kept: async () => kept,
      forget: async () => void calls.push('forget'),
      settle: async () => void calls.push('settle'),
      settleAll: async () => void calls.push('settle all'),
    },
    output: {
      begin: async (name) => {
        calls.push(`begin ${name}`);
        return {
          write: async (path, content) => {
            calls.push(`write ${path}`);
            return { size: content.length, sha256: 'x' };
          },
          finish: async () => ({ place: `/home/${name}` }),
          discard: async () => void calls.push(`discard ${name}`),
        };
      },
      show: async (place) => void calls.push(`show ${place}`),
    },
    about: { version: '1.2.3', platform: 'desktop' },
    ...change,
  };
  return { ports, calls };
}
