import type { Material } from '../../core/scene/types.ts';
import { between } from './colour.ts';
import type { Hatch } from './hatch.ts';
import type { Tokens } from './tokens.ts';

/** The colours of the picture, from those of the page. */
export interface Palette {
  readonly fill: Readonly<Record<Material, string>>;
  readonly line: string;
  readonly faint: string;
  readonly contact: string;
  readonly dimension: string;
  readonly left: string;
  readonly zone: string;
}

export const paletteOf = (tokens: Tokens): Palette => ({
  fill: {
    front: tokens('wood-front'),
    box: tokens('wood-box'),
    jig: tokens('jig'),
    key: between(tokens('jig'), tokens('panel'), 0.5),
    pin: between(tokens('jig'), tokens('panel'), 0.7),
    bit: between(tokens('ink'), tokens('panel'), 0.4),
    screw: between(tokens('accent'), tokens('panel'), 0.35),
  },
  line: tokens('ink'),
  faint: tokens('line-strong'),
  contact: tokens('contact'),
  dimension: tokens('dimension'),
  left: tokens('accent'),
  zone: tokens('warning'),
});

/** How cut wood is hatched: neighbours never alike. */
export const CUT_HATCH: Readonly<Record<Material, Hatch>> = {
  front: { way: 'rising', every: 9, stroke: 1.5 },
  box: { way: 'falling', every: 9, stroke: 1.5 },
  jig: { way: 'level', every: 5, stroke: 1.5 },
  key: { way: 'rising', every: 5, stroke: 1.5 },
  pin: { way: 'falling', every: 5, stroke: 1.5 },
  bit: { way: 'level', every: 3, stroke: 1.5 },
  screw: { way: 'level', every: 3, stroke: 1.5 },
};

export const CONTACT_HATCH: Hatch = { way: 'falling', every: 8, stroke: 2 };
