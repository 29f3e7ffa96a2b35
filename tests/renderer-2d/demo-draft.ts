import { readFileSync } from 'node:fs';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import type { Draft } from '../../core/project/draft.ts';
import { draftFromOrder } from '../../core/project/draft-from-order.ts';
import { createDesignSession, type DesignSession } from '../../core/session/design-session.ts';
import type { Designed } from '../../core/session/types.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { readMachine } from '../jigs/setups.ts';
import { readStandard } from '../rules/read-standard.ts';

export interface DemoDraft {
  readonly draft: Draft;
  readonly designed: Designed;
  readonly session: DesignSession;
}

/** A demo order as a draft, changed as a test wants it, and what it comes to. */
export function demoDraft(
  name: 'harbor-library' | 'boathouse-frameless',
  change: (draft: Draft) => Draft = (draft) => draft,
): DemoDraft {
  const frameless = name === 'boathouse-frameless';
  const standard = readStandard(frameless ? 'frameless-undermount.json' : 'face-frame-undermount.json');
  const text = readFileSync(new URL(`../../assets/orders/${name}.csv`, import.meta.url), 'utf8');
  const unit = frameless ? 'mm' : 'in';
  const read = readOrderCsv(text, { file: `${name}.csv`, name, unit, date: '2026-12-01', standard });
  const machine = readMachine('laser-6');
  const draft = change(draftFromOrder(read.value, { standard, machine, registration: 'edge' }));
  const session = createDesignSession(STROKE_FONT);
  return { draft, designed: session.design(draft, 1), session };
}

/** Another text in a cell of every row of a cabinet's drawer. */
export const withCell =
  (cabinet: string, drawer: string, column: 'style' | 'front_w' | 'left', text: string) =>
  (draft: Draft): Draft => ({
    ...draft,
    rows: draft.rows.map((row) =>
      row.cells.cabinet === cabinet && row.cells.drawer === drawer
        ? { ...row, cells: { ...row.cells, [column]: text } }
        : row,
    ),
  });

/** The id of the first row of a cabinet. */
export const rowOf = ({ draft }: DemoDraft, cabinet: string, drawer?: string): string => {
  const row = draft.rows.find(
    ({ cells }) => cells.cabinet === cabinet && (drawer === undefined || cells.drawer === drawer),
  );
  if (row === undefined) throw new Error(`no row of ${cabinet}`);
  return row.id;
};
