import type { RingContour } from '../geometry/types.ts';
import type { Lip } from './lip.ts';
import type { Label, Piece } from './types.ts';

interface LipLayers {
  readonly id: string;
  readonly lip: Lip;
  /** Ending of the pieces' names where a jig has two lips; else empty. */
  readonly suffix: string;
  /** What the layers that touch the edge look like; the dust layer has its holes and its own outline. */
  readonly register: Pick<Piece, 'outline' | 'holes' | 'pockets' | 'seatCorners'>;
  readonly dustOutline: RingContour;
  /** Where the layers are labelled, and what the outer ones say; the dust layer has the first place only. */
  readonly labels: readonly [Label, ...Label[]];
}

/** The pieces of a lip, and the names of its layers from the plate outwards. */
export function lipLayers({ id, lip, suffix, register, dustOutline, labels }: LipLayers) {
  const hasDustLayer = lip.relief === 'layer';
  const name = `lip${suffix}`;
  const dustName = `dust-layer${suffix}`;
  const [{ center, width, height }] = labels;
  const outer: Piece = {
    ...register,
    name,
    copies: lip.layers - (hasDustLayer ? 1 : 0),
    labels,
  };
  const dust: Piece = {
    ...register,
    name: dustName,
    copies: 1,
    outline: dustOutline,
    pockets: [],
    seatCorners: [],
    labels: [{ phrases: [id, 'DUST LAYER'], center, width, height }],
  };
  const outerNames = Array.from({ length: outer.copies }, () => name);
  return {
    name,
    pieces: hasDustLayer ? [dust, outer] : [outer],
    layerNames: hasDustLayer ? [dustName, ...outerNames] : outerNames,
  };
}
