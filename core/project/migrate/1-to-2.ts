/**
 * A version 1 document of a project as one of version 2, which may have the columns `box_d` and `species` and
 * more clauses in the cells of `front` and `pull`; every version 1 document says the same in version 2.
 */
export const projectFrom1 = (json: unknown): unknown =>
  typeof json === 'object' && json !== null ? { ...json, version: 2 } : json;
