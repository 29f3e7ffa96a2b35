import { sameData } from '../collections/same-data.ts';
import type { Finding } from '../findings/finding.ts';
import type { DrawerFit } from '../fit/types.ts';
import { fastenOrder } from '../fastening/fasten-order.ts';
import type { Fastening } from '../fastening/types.ts';
import type { Shared } from '../jigs/sharing/share-order.ts';
import type { Sharing } from '../jigs/sharing/types.ts';
import { planOrder } from '../jigs/plan-order.ts';
import type { Jig } from '../jigs/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { engravedWords } from '../order/engraved-words.ts';
import type { Draft } from '../project/draft.ts';
import { fitDraft } from './compare-fits.ts';

export interface JigChange {
  readonly id: string;
  readonly kind: string;
  readonly change: 'other pieces' | 'new' | 'gone';
}

/** What an edit of the machine profile does to the jigs of an order. */
export interface MachineComparison {
  /** How many jigs the order had. */
  readonly jigs: number;
  readonly changed: readonly JigChange[];
  /** The lines of the cuts move in the files, even around the same pieces. */
  readonly path: boolean;
  /** The text of the files is another: layers, or how DXF is written. */
  readonly files: boolean;
  readonly begun: readonly Finding[];
}

/** What a design of the draft has that another machine does not change, and the jigs that it has now. */
export interface KnownDesign {
  /** Those that are no error, and how each is fastened. */
  readonly fits: readonly DrawerFit[];
  readonly fastenings: readonly Fastening[];
  readonly jigs: readonly Jig[];
  readonly findings: readonly Finding[];
  /** Which drawers would share jigs with the other machine, as the draft wishes. */
  readonly sharedAfter: Shared;
}

/**
 * Compares an order's jigs for the machine of its draft and for another. What a design has is taken from it; without
 * one, each distinct overhang has its own jig.
 */
export function compareMachines(
  draft: Draft,
  after: MachineProfile,
  known: KnownDesign = designAnew(draft),
): MachineComparison {
  const before = draft.machine;
  const { fits, fastenings, sharedAfter } = known;
  const is = planDraft(draft, after, fits, fastenings, sharedAfter.value);
  const olds = new Map(known.jigs.map((jig) => [jig.id, jig]));
  const news = new Map(is.value.jigs.map((jig) => [jig.id, jig]));
  const change = (id: string, of: Jig, kind: JigChange['change']): JigChange => ({
    id,
    kind: of.kind,
    change: kind,
  });
  const old = new Set(known.findings.map(({ message }) => message));
  return {
    jigs: known.jigs.length,
    changed: [
      ...is.value.jigs.flatMap((jig) => {
        const earlier = olds.get(jig.id);
        if (earlier === undefined) return [change(jig.id, jig, 'new')];
        const same = earlier.kind === jig.kind && sameData(earlier.pieces, jig.pieces);
        return same ? [] : [change(jig.id, jig, 'other pieces')];
      }),
      ...known.jigs.flatMap((jig) => (news.has(jig.id) ? [] : [change(jig.id, jig, 'gone')])),
    ],
    path: drawnKerf(before) !== drawnKerf(after),
    files: !sameData(before.layers, after.layers) || !sameData(before.dxf, after.dxf),
    begun: [...sharedAfter.findings, ...is.findings].filter(({ message }) => !old.has(message)),
  };
}

function planDraft(
  draft: Draft,
  machine: MachineProfile,
  fits: readonly DrawerFit[],
  fastenings: readonly Fastening[],
  sharing: Sharing | null,
) {
  const { registration, standard, unit } = draft;
  return planOrder(
    { fits, fastenings, registration, standard, sharing: sharing ?? undefined },
    { machine, unit, order: engravedWords(draft) },
  );
}

/** The same as a design, with a jig for each distinct overhang. */
function designAnew(draft: Draft): KnownDesign {
  const fitted = fitDraft(draft);
  // As a design does: a drawer with a fault has no jig.
  const faulty = new Set(
    fitted.findings.filter(({ severity }) => severity === 'error').map(({ at }) => at.row),
  );
  const fits = [...fitted.fits.values()].filter(({ drawer }) => !faulty.has(drawer.row));
  const fastenings = fastenOrder(fits, draft.standard).value;
  const { value, findings } = planDraft(draft, draft.machine, fits, fastenings, null);
  return { fits, fastenings, jigs: value.jigs, findings, sharedAfter: { value: null, findings: [] } };
}

/** Width of the cut that the files allow for, mm. */
const drawnKerf = ({ kerf, compensation }: MachineProfile): number => (compensation === 'file' ? kerf : 0);
