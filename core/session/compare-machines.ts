import { sameData } from '../collections/same-data.ts';
import type { Finding } from '../findings/finding.ts';
import { fastenOrder } from '../fastening/fasten-order.ts';
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

/** Compares an order's jigs for the machine of its draft and for another. */
export function compareMachines(draft: Draft, after: MachineProfile): MachineComparison {
  const before = draft.machine;
  const fitted = fitDraft(draft);
  // As a design does: a drawer with a fault has no jig.
  const faulty = new Set(
    fitted.findings.filter(({ severity }) => severity === 'error').map(({ at }) => at.row),
  );
  const fits = [...fitted.fits.values()].filter(({ drawer }) => !faulty.has(drawer.row));
  const { registration, standard, unit } = draft;
  const fastenings = fastenOrder(fits, standard).value;
  const plan = (machine: MachineProfile) =>
    planOrder({ fits, fastenings, registration, standard }, { machine, unit, order: engravedWords(draft) });
  const [was, is] = [plan(before), plan(after)];
  const olds = new Map(was.value.jigs.map((jig) => [jig.id, jig]));
  const news = new Map(is.value.jigs.map((jig) => [jig.id, jig]));
  const change = (id: string, of: Jig, kind: JigChange['change']): JigChange => ({
    id,
    kind: of.kind,
    change: kind,
  });
  const old = new Set(was.findings.map(({ message }) => message));
  return {
    jigs: was.value.jigs.length,
    changed: [
      ...is.value.jigs.flatMap((jig) => {
        const earlier = olds.get(jig.id);
        if (earlier === undefined) return [change(jig.id, jig, 'new')];
        const same = earlier.kind === jig.kind && sameData(earlier.pieces, jig.pieces);
        return same ? [] : [change(jig.id, jig, 'other pieces')];
      }),
      ...was.value.jigs.flatMap((jig) => (news.has(jig.id) ? [] : [change(jig.id, jig, 'gone')])),
    ],
    path: drawnKerf(before) !== drawnKerf(after),
    files: !sameData(before.layers, after.layers) || !sameData(before.dxf, after.dxf),
    begun: is.findings.filter(({ message }) => !old.has(message)),
  };
}

/** Width of the cut that the files allow for, mm. */
const drawnKerf = ({ kerf, compensation }: MachineProfile): number => (compensation === 'file' ? kerf : 0);
