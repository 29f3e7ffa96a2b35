import { keepSame } from '../collections/same-data.ts';
import type { Outcome } from '../findings/finding.ts';
import type { Jig } from '../jigs/types.ts';
import type { MachineProfile } from '../machine/profile.ts';
import { partsOf, partsOfJig } from '../parts/parts-of.ts';
import { compensate } from '../parts/compensate.ts';
import type { StrokeFont } from '../parts/stroke-font.ts';
import type { Part } from '../parts/types.ts';
import { keyedMemo } from './keyed-memo.ts';
import type { PartDetail, PartSummary } from './types.ts';

/** Makes parts, again and again: those of jigs that are still the same are kept. */
export interface PartMaker {
  readonly make: (jigs: readonly Jig[], machine: MachineProfile) => Outcome<readonly Part[]>;
  readonly summaryOf: (part: Part) => PartSummary;
  readonly detailOf: (part: Part, machine: MachineProfile) => PartDetail;
  readonly endRound: () => void;
}

export function partMaker(font: StrokeFont): PartMaker {
  const made = keyedMemo<string, [Jig, MachineProfile, StrokeFont], Outcome<readonly Part[]>>(partsOfJig, {
    keep: keepParts,
  });
  const summaries = keyedMemo<string, [Part], PartSummary>(({ features: _features, ...summary }) => summary, {
    keep: keepSame,
  });
  // A detail is looked at between the rounds, and kept as long as its part.
  const details = new WeakMap<Part, { readonly machine: MachineProfile; readonly detail: PartDetail }>();
  return {
    make: (jigs, machine) =>
      partsOf(jigs, machine, font, (jig, profile, strokes) => made.get(jig.id, jig, profile, strokes)),
    summaryOf: (part) => summaries.get(part.id, part),
    detailOf(part, machine) {
      const known = details.get(part);
      if (known?.machine === machine) return known.detail;
      const detail = { part, followed: compensate(part, machine).value };
      details.set(part, { machine, detail });
      return detail;
    },
    endRound() {
      made.endRound();
      summaries.endRound();
    },
  };
}

/** A jig that has changed may have parts that have not. */
const keepParts = (
  before: Outcome<readonly Part[]>,
  after: Outcome<readonly Part[]>,
): Outcome<readonly Part[]> => ({
  ...after,
  value: after.value.map((part) => {
    const earlier = before.value.find(({ id }) => id === part.id);
    return earlier === undefined ? part : keepSame(earlier, part);
  }),
});
