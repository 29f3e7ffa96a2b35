import * as fc from 'fast-check';
import type { OrderColumn } from '../../core/order/columns.ts';
import type { Draft, DraftRow } from '../../core/project/draft.ts';
import { draftRows } from '../../core/project/draft-rows.ts';
import { readMachine } from '../jigs/setups.ts';
import { readStandard } from '../rules/read-standard.ts';

/** A change of a draft with words for a failing run's report. */
export interface Edit {
  readonly words: string;
  readonly apply: (draft: Draft) => Draft;
}

/** Cells as people write them, right and wrong. */
const TEXTS: ReadonlyMap<OrderColumn, readonly string[]> = new Map<OrderColumn, readonly string[]>([
  ['opening_w', ['14', '15 1/4', '400 mm', '15 19/16', '', '40 ft', '3']],
  ['opening_h', ['6', '4 1/2', '160 mm', '-1', '12', '1']],
  ['style', ['inset', 'full overlay', 'flush', '']],
  ['cabinet', ['B1', 'R1', 'b1', '']],
  ['drawer', ['top', 'low', '', 'upper']],
  ['qty', ['1', '2', '0']],
  ['column', ['1', '2', '9', 'x', '']],
  ['position', ['top', 'middle', 'bottom', '']],
  ['bottom', ['inset 3/32', 'lap 1 1/4', 'cover 1 1/2 reveal 1/8', 'lap', '']],
  ['left', ['share 1 1/2 gap 1/8', 'lap 20 mm', '']],
  ['front_h', ['', '5', '30']],
  ['front_thickness', ['', '3/4', '1/4']],
  ['box_w', ['', '13', '14 15/16', '99']],
  ['note', ['', 'by the door', 'a, “b”']],
]);

const index = fc.nat({ max: 30 });

const cellEdit: fc.Arbitrary<Edit> = fc
  .constantFrom(...TEXTS)
  .chain(([column, texts]) =>
    fc.record({ column: fc.constant(column), text: fc.constantFrom(...texts), index }),
  )
  .map(({ column, text, index }) => ({
    words: `${column} of row ${index} := ${text}`,
    apply: (draft) =>
      atRow(draft, index, (row, at) => {
        const { [column]: _old, ...others } = row.cells;
        const cells = text === '' ? others : { ...others, [column]: text };
        return draft.rows.with(at, { ...row, cells });
      }),
  }));

const rowEdit: fc.Arbitrary<Edit> = fc
  .record({ what: fc.constantFrom('duplicate', 'add', 'remove', 'move down', 'none left'), index })
  .map(({ what, index }) => ({
    words: `${what} at row ${index}`,
    apply: (draft) => {
      if (what === 'none left') return index < 29 ? draft : { ...draft, rows: [] };
      if (what === 'add') return { ...draft, rows: [...draft.rows, ...draftRows([{}], draft.rows)] };
      return atRow(draft, index, (row, at) => {
        if (what === 'remove') return draft.rows.toSpliced(at, 1);
        if (what === 'move down') return draft.rows.toSpliced(at, 1).toSpliced(at + 1, 0, row);
        return draft.rows.toSpliced(at, 0, ...draftRows([row.cells], draft.rows));
      });
    },
  }));

const STANDARDS = ['face-frame-undermount', 'face-frame-side-mount', 'frameless-undermount'] as const;

const wholeEdit: fc.Arbitrary<Edit> = fc.oneof(
  fc.constantFrom('each' as const, 'fewest' as const, 9).map((sharing): Edit => ({
    words: `jigs shared: ${sharing}`,
    apply: (draft) => ({ ...draft, sharing }),
  })),
  fc.constantFrom('edge' as const, 'corner' as const).map((registration): Edit => ({
    words: `jigs on ${registration}`,
    apply: (draft) => ({ ...draft, registration }),
  })),
  fc.constantFrom('laser-6' as const, 'laser-3' as const, 'router' as const).map((name): Edit => ({
    words: `machine ${name}`,
    apply: (draft) => ({ ...draft, machine: readMachine(name) }),
  })),
  fc.constantFrom(...STANDARDS).map((name): Edit => ({
    words: `standard ${name}`,
    apply: (draft) => ({ ...draft, standard: readStandard(`${name}.json`) }),
  })),
  fc.double({ min: 0, max: 6, noNaN: true }).map((mm): Edit => ({
    words: `smallest gap ${mm}`,
    apply: (draft) => {
      const { limits } = draft.standard;
      const smallestGap = { ...limits.smallestGap, value: mm };
      return { ...draft, standard: { ...draft.standard, limits: { ...limits, smallestGap } } };
    },
  })),
  fc.constantFrom('Harbor', '', 'a\u0007').map((name): Edit => ({
    words: `name ${name}`,
    apply: (draft) => ({ ...draft, name }),
  })),
  fc.constantFrom('2032-02-29', '2031-02-29', undefined).map((date): Edit => ({
    words: `date ${date}`,
    apply: ({ date: _old, ...draft }) => (date === undefined ? draft : { ...draft, date }),
  })),
  fc.constantFrom('in' as const, 'mm' as const).map((unit): Edit => ({
    words: `unit ${unit}`,
    apply: (draft) => ({ ...draft, unit }),
  })),
);

/** Any change that a person can make; cells most often. */
export const anyEdit: fc.Arbitrary<Edit> = fc.oneof(
  { weight: 5, arbitrary: cellEdit },
  { weight: 3, arbitrary: rowEdit },
  { weight: 1, arbitrary: wholeEdit },
);

function atRow(
  draft: Draft,
  index: number,
  change: (row: DraftRow, at: number) => readonly DraftRow[],
): Draft {
  const at = index % Math.max(1, draft.rows.length);
  const row = draft.rows[at];
  return row === undefined ? draft : { ...draft, rows: change(row, at) };
}
