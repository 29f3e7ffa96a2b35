import type { Jig, Seat } from '../jigs/types.ts';
import { cross } from '../jigs/vec3.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { piecesApart } from './apart.ts';
import { pieceLayers } from './piece-layers.ts';
import { pins } from './pins.ts';
import type { Layer, Solid } from './types.ts';
import { dot, ORIGIN } from './vec.ts';

/** The pieces of a jig in a seat, each copy a solid, and the bought pins that hold them; in the seat's frame. */
export function jigSolids(jig: Jig, seat: Seat, machine: MachineProfile): readonly Solid[] {
  const layers = new Map<string, readonly Layer[]>(
    jig.pieces.map((piece) => [piece.name, pieceLayers(piece, machine)]),
  );
  const counts = new Map<string, number>();
  const [first] = seat.poses;
  if (first === undefined) return [];
  const axis = cross(first.pose.u, first.pose.v);
  const pieces = seat.poses.map(({ piece, pose }): Solid => {
    const count = (counts.get(piece) ?? 0) + 1;
    counts.set(piece, count);
    // Keys stand across the sheets that they hold together.
    const isKey = Math.abs(dot(cross(pose.u, pose.v), axis)) < 0.5;
    return {
      id: `${piece}-${count}`,
      name: `${jig.id} ${piece.replaceAll('-', ' ')}`,
      group: 'jig',
      material: isKey ? 'key' : 'jig',
      pose,
      layers: layers.get(piece) ?? [],
      lines: [],
      apart: ORIGIN,
      ghost: false,
    };
  });
  return piecesApart([...pieces, ...pins(jig, seat, machine)], axis);
}
