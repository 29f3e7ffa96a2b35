import type { Slope, SlopeBox } from './slope.ts';

/**
 * Slopes by whole angle and direction: tangents from `least` to `most`, towards directions from `from` to `to`
 * in radians, where 0 is the side and a quarter turn the rail. What depends on the whole angle alone is the same
 * all along such a sector, which squares of slopes would cut slantwise.
 */
export interface Sector {
  readonly least: number;
  readonly most: number;
  readonly from: number;
  readonly to: number;
}

export const allSlopes = (most: number): Sector => ({ least: 0, most, from: 0, to: Math.PI / 2 });

export const slopeAt = (tangent: number, direction: number): Slope => ({
  side: tangent * Math.cos(direction),
  rail: tangent * Math.sin(direction),
});

export function sectorBox({ least, most, from, to }: Sector): SlopeBox {
  return {
    side: [least * Math.cos(to), most * Math.cos(from)],
    rail: [least * Math.sin(from), most * Math.sin(to)],
    tangent: [least, most],
    secant: [Math.sqrt(1 + least * least), Math.sqrt(1 + most * most)],
  };
}

/** The larger of how far a sector goes in angle and along its outer arc. */
export const sectorSize = ({ least, most, from, to }: Sector): number =>
  Math.max(most - least, most * (to - from));

/** Its halves across its longer way, the one with the smaller angles first. */
export function splitSector(sector: Sector): readonly [Sector, Sector] {
  const { least, most, from, to } = sector;
  if (most - least >= most * (to - from)) {
    const middle = (least + most) / 2;
    return [
      { ...sector, most: middle },
      { ...sector, least: middle },
    ];
  }
  const middle = (from + to) / 2;
  return [
    { ...sector, to: middle },
    { ...sector, from: middle },
  ];
}

export const middleOf = ({ least, most, from, to }: Sector): Slope =>
  slopeAt((least + most) / 2, (from + to) / 2);
