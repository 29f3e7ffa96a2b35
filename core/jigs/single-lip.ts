import { hookedStrip } from './hooked-strip.ts';
import { designLip, type Lip } from './lip.ts';
import { bevelWords, overhangText } from './phrases.ts';
import { bevelSensitivity } from './sensitivity.ts';
import type { BuildContext, Jig, Setting, Setup } from './types.ts';

interface SingleLip {
  readonly id: string;
  /** The kind, and what is engraved of it. */
  readonly kind: string;
  readonly setup: Setup;
  /** Length of the lip along the edge, mm. */
  readonly length: number;
  readonly parameters: Readonly<Record<string, number>>;
  readonly edges: Setting['edges'];
}

/** A jig of one plate and one lip, for one overhang at one edge. */
export function singleLipJig(jig: SingleLip, context: BuildContext): Jig {
  const { id, kind, setup, length, parameters, edges } = jig;
  const lip = lipFor(setup, context);
  const { pieces, seat, pins } = hookedStrip({
    id,
    length,
    boxLength: setup.boxLength,
    reach: setup.overhang - lip.setback,
    lip,
    machine: context.machine,
    overhang: overhangText(setup.overhang, context),
    kind: kind.toUpperCase(),
    notes: [...bevelWords(setup, context), ...context.order],
  });
  const { backBevel, frontThickness } = setup;
  return {
    id,
    kind,
    hand: null,
    parameters,
    pieces,
    pins,
    seats: [{ ...seat, sets: [{ edges, overhang: setup.overhang, backBevel, frontThickness }] }],
    sensitivity: bevelSensitivity(setup, lip),
  };
}

/** The lip for a set-up on a machine, or why none is possible. */
const lipOrRefusal = (setup: Setup, { machine }: BuildContext): Lip | string =>
  designLip(setup, machine.sheet.thickness, machine.kind === 'router');

/** The lip for a set-up that no kind has refused. */
export function lipFor(setup: Setup, context: BuildContext): Lip {
  const lip = lipOrRefusal(setup, context);
  if (typeof lip === 'string') throw new RangeError(lip);
  return lip;
}

/** Why a machine can build no lip for a set-up, or null. */
export function lipRefusal(setup: Setup, context: BuildContext): string | null {
  const lip = lipOrRefusal(setup, context);
  return typeof lip === 'string' ? lip : null;
}
