import harborLibrary from '../../assets/orders/harbor-library.csv?raw';
import { parseMachine } from '../../core/machine/parse-machine.ts';
import { draftFromCsv } from '../../core/project/draft-from-csv.ts';
import type { Draft } from '../../core/project/draft.ts';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import { MACHINES, STANDARDS } from '../../shared/library.ts';

function draftOf(text: string, name: string): Draft {
  const standard = parseStandard(STANDARDS['face-frame-undermount'], 'standard').value;
  const machine = parseMachine(MACHINES['laser-6'], 'machine').value;
  if (standard === null || machine === null) throw new Error('the library is at fault');
  return draftFromCsv(text, {
    file: `${name}.csv`,
    name,
    date: '2031-05-20',
    unit: 'in',
    standard,
    machine,
    registration: 'edge',
  }).value;
}

/** An order of so many drawers as shops have them: the demo order's cabinets again and again, on other floors. */
export function alikeDraft(drawers: number): Draft {
  const demo = draftOf(harborLibrary, 'alike');
  const rows = Array.from({ length: drawers }, (_, index) => {
    const row = demo.rows[index % demo.rows.length];
    if (row === undefined) throw new RangeError('the demo order has no rows');
    const room = `Floor ${Math.floor(index / demo.rows.length) + 1}, ${row.cells.room ?? 'room'}`;
    return { id: `r${index + 1}`, cells: { ...row.cells, room } };
  });
  return { ...demo, rows };
}

/** An order of so many drawers of which no two have the same size. */
export function distinctDraft(drawers: number): Draft {
  const rows = Array.from({ length: drawers }, (_, index) => {
    const [width, height] = [12 + (index % 25) / 2, 5 + Math.floor(index / 25) / 16];
    return `B${index + 1},only,1,full overlay,${width},${height}`;
  });
  return draftOf(['cabinet,drawer,qty,style,opening_w,opening_h', ...rows, ''].join('\n'), 'distinct');
}
