import type { Finding } from '../findings/finding.ts';
import { error, warning } from '../findings/make.ts';
import { cornersOf, normalOf, volumeOf } from './measure.ts';
import type { Mesh } from './types.ts';

/** Why a printer could not tell the inside of a mesh from its outside; `name` is the file's, for people. */
export function checkMesh(mesh: Mesh, name: string): readonly Finding[] {
  const at = { file: name };
  const findings: Finding[] = [];
  const open = openEdges(mesh);
  if (open > 0) {
    findings.push(
      error(
        'mesh/open',
        `The solid of ${name} has ${open} edges that are not between two triangles; every edge must be between exactly two, which run along it opposite ways.`,
        at,
        { edges: open },
      ),
    );
  }
  const flat = mesh.triangles.filter(
    (triangle) => new Set(triangle).size < 3 || normalOf(cornersOf(mesh, triangle)).length === 0,
  ).length;
  if (flat > 0) {
    findings.push(
      warning(
        'mesh/degenerate',
        `The solid of ${name} has ${flat} triangles without area; each should have three corners that are not in one line.`,
        at,
        { triangles: flat },
      ),
    );
  }
  const volume = volumeOf(mesh);
  if (!(volume > 0)) {
    findings.push(
      error(
        'mesh/no-volume',
        `The solid of ${name} encloses ${volume} mm³; it must enclose more than nothing, with its triangles counter-clockwise seen from outside.`,
        at,
        { volume },
      ),
    );
  }
  return findings;
}

/** Edges that do not have one triangle along them each way. */
function openEdges({ triangles }: Mesh): number {
  const walked = new Map<string, number>();
  for (const [a, b, c] of triangles) {
    for (const edge of [`${a} ${b}`, `${b} ${c}`, `${c} ${a}`]) walked.set(edge, (walked.get(edge) ?? 0) + 1);
  }
  const back = (edge: string): string => edge.split(' ').toReversed().join(' ');
  return [...walked].filter(([edge, times]) => times !== 1 || walked.get(back(edge)) !== 1).length;
}
