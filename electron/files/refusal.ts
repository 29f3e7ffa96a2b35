/** Something that cannot be done for a reason the user can understand and mend; anything else that is thrown is our fault. */
export class Refusal extends Error {}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'it is not there any more',
  EISDIR: 'it is a folder',
  ENOTDIR: 'its folder is not there',
  EACCES: 'the system does not allow it; ask for the rights to it, or choose another place',
  EPERM: 'the system does not allow it; ask for the rights to it, or choose another place',
  EROFS: 'the disk is read-only; choose another place',
  ENOSPC: 'the disk is full; free some room there, or choose another disk',
  EDQUOT: 'the disk quota is used up',
  EBUSY: 'another program holds it',
  ENAMETOOLONG: 'the name is too long',
};

/** What a failed call to the file system means in words: `it is not there any more`. */
export function reasonOf(problem: unknown): string {
  if (!(problem instanceof Error)) return String(problem);
  return REASONS[codeOf(problem)] ?? problem.message;
}

/** The system's code of a failed call: `ENOENT`; empty where there is none. */
export const codeOf = (problem: unknown): string =>
  problem instanceof Error && 'code' in problem && typeof problem.code === 'string' ? problem.code : '';
