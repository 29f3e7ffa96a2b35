import type { Vertex } from '../geometry/types.ts';
import { numberOf, type DxfRecord, type Group } from './dxf-groups.ts';

/** A polyline or circle as the checker reads it from the ENTITIES section, in the file's unit. */
export interface Outline {
  readonly type: string;
  readonly line: number;
  readonly layer: string;
  readonly closed: boolean;
  readonly vertices: readonly Vertex[];
  /** Of a circle: [x, y, radius]. */
  readonly circle: readonly [number, number, number] | null;
  /** Number of vertices that the entity says it has; null for types that don't say. */
  readonly statedCount: number | null;
  /** Whether a POLYLINE has its SEQEND. */
  readonly ended: boolean;
}

/** Outlines of the ENTITIES section; records of other types are passed over. */
export function outlinesOf(records: readonly DxfRecord[]): readonly Outline[] {
  const outlines: Outline[] = [];
  for (const [index, record] of records.entries()) {
    const { type, line, groups } = record;
    const common = { type, line, layer: groups.find(({ code }) => code === 8)?.value ?? '', circle: null };
    const closed = (numberOf(groups, 70) & 1) === 1;
    if (type === 'CIRCLE') {
      const circle = [numberOf(groups, 10), numberOf(groups, 20), numberOf(groups, 40)] as const;
      outlines.push({ ...common, closed: true, vertices: [], circle, statedCount: null, ended: true });
    } else if (type === 'LWPOLYLINE') {
      const vertices = lightVertices(groups);
      outlines.push({ ...common, closed, vertices, statedCount: numberOf(groups, 90), ended: true });
    } else if (type === 'POLYLINE') {
      let end = index + 1;
      while (records[end]?.type === 'VERTEX') end += 1;
      const vertices = records.slice(index + 1, end).map((vertex) => vertexOf(vertex.groups));
      const ended = records[end]?.type === 'SEQEND';
      outlines.push({ ...common, closed, vertices, statedCount: null, ended });
    }
  }
  return outlines;
}

const vertexOf = (groups: readonly Group[]): Vertex => ({
  x: numberOf(groups, 10),
  y: numberOf(groups, 20),
  bulge: groups.some(({ code }) => code === 42) ? numberOf(groups, 42) : 0,
});

/** Group 10 begins a vertex; 20 and 42 belong to the vertex before them. */
function lightVertices(groups: readonly Group[]): readonly Vertex[] {
  const vertices: { x: number; y: number; bulge: number }[] = [];
  for (const { code, value } of groups) {
    const last = vertices.at(-1);
    if (code === 10) vertices.push({ x: Number(value), y: NaN, bulge: 0 });
    else if (code === 20 && last !== undefined) last.y = Number(value);
    else if (code === 42 && last !== undefined) last.bulge = Number(value);
  }
  return vertices;
}
