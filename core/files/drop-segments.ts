import type { PathContour, Vertex } from '../geometry/types.ts';

/** The open paths that are left of a path without the segments of these indices; segment i starts at vertex i. */
export function dropSegments(path: PathContour, dropped: ReadonlySet<number>): readonly PathContour[] {
  const left: PathContour[] = [];
  let run: Vertex[] = [];
  for (const [index, vertex] of path.vertices.entries()) {
    const last = index === path.vertices.length - 1;
    if (last || dropped.has(index)) {
      if (run.length > 0) left.push({ kind: 'path', vertices: [...run, { ...vertex, bulge: 0 }] });
      run = [];
    } else {
      run.push(vertex);
    }
  }
  return left;
}
