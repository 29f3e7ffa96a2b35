import type { Finding } from '../findings/finding.ts';
import type { Vertex } from '../geometry/types.ts';
import { COORDINATE_DECIMALS, SHORTEST_SEGMENT } from '../units/tolerances.ts';
import type { DxfSettings } from './drawing.ts';
import { fault } from './dxf-groups.ts';
import type { Outline } from './dxf-outlines.ts';
import { MM_PER_UNIT } from './entities.ts';

/** The shapes of one outline: counts, radius, bulges, lengths, and what the switches allow (DXF-2, DXF-4). */
export function checkOutline(outline: Outline, settings: DxfSettings): readonly Finding[] {
  const { line, circle } = outline;
  if (circle !== null) {
    const radius = circle[2] > 0 ? [] : [fault('radius', `the circle's radius is ${circle[2]}`, line)];
    return settings.arcsAsLines
      ? [...radius, fault('arc', 'a circle, where arcs are to be lines', line)]
      : radius;
  }
  return [...checkCounts(outline), ...checkBulges(outline, settings), ...checkSides(outline, settings)];
}

function checkCounts({ line, vertices, statedCount, ended, closed }: Outline): readonly Finding[] {
  const findings: Finding[] = [];
  if (statedCount !== null && statedCount !== vertices.length) {
    findings.push(fault('vertex-count', `says ${statedCount} vertices and has ${vertices.length}`, line));
  }
  if (vertices.length < 2) findings.push(fault('vertex-count', `has ${vertices.length} vertices`, line));
  if (!ended) findings.push(fault('structure', 'the polyline has no SEQEND', line));
  const flat = closed && vertices.length === 2 && vertices.every(({ bulge }) => bulge === 0);
  return flat
    ? [...findings, fault('vertex-count', 'a closed outline of two straight sides', line)]
    : findings;
}

const checkBulges = ({ line, vertices }: Outline, settings: DxfSettings): readonly Finding[] =>
  vertices.flatMap(({ bulge }, index) => {
    if (Math.abs(bulge) > 1) return [fault('bulge', `vertex ${index + 1} has the bulge ${bulge}`, line)];
    const curved = settings.arcsAsLines && bulge !== 0;
    return curved
      ? [fault('arc', `vertex ${index + 1} begins an arc, where arcs are to be lines`, line)]
      : [];
  });

function checkSides({ line, vertices, closed }: Outline, settings: DxfSettings): readonly Finding[] {
  const scale = MM_PER_UNIT[settings.unit];
  const repeated = closed && distanceOf(vertices.at(-1), vertices[0]) === 0;
  const findings: Finding[] = [];
  if (repeated && !settings.repeatFirstPoint) {
    findings.push(fault('repeated-vertex', 'the last vertex repeats the first', line));
  }
  if (closed && !repeated && settings.repeatFirstPoint) {
    findings.push(fault('repeated-vertex', 'the last vertex should repeat the first', line));
  }
  // Ends are rounded as they are written: a side may have lost one step at each end.
  const least = SHORTEST_SEGMENT - 2 * 10 ** -COORDINATE_DECIMALS * scale;
  const sides = closed && !repeated ? vertices.length : vertices.length - 1;
  for (let index = 0; index < sides; index += 1) {
    const length = distanceOf(vertices[index], vertices[(index + 1) % vertices.length]) * scale;
    if (length < least) findings.push(fault('short-segment', `side ${index + 1} is ${length} mm long`, line));
  }
  return findings;
}

const distanceOf = (a: Vertex | undefined, b: Vertex | undefined): number =>
  a === undefined || b === undefined ? NaN : Math.hypot(a.x - b.x, a.y - b.y);
