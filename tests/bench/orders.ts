import harborLibrary from '../../assets/orders/harbor-library.csv?raw';
import { parseMachine } from '../../core/machine/parse-machine.ts';
import { draftFromCsv } from '../../core/project/draft-from-csv.ts';
import type { Draft } from '../../core/project/draft.ts';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import { MACHINES, STANDARDS } from '../../shared/library.ts';
import { repeatedDraft } from '../session/repeated-draft.ts';

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
export const alikeDraft = (drawers: number): Draft => repeatedDraft(draftOf(harborLibrary, 'alike'), drawers);

/** An order of so many drawers of which no two have the same size. */
export function distinctDraft(drawers: number): Draft {
  const rows = Array.from({ length: drawers }, (_, index) => {
    const [width, height] = [12 + (index % 25) / 2, 5 + Math.floor(index / 25) / 16];
    return `B${index + 1},only,1,full overlay,${width},${height}`;
  });
  return draftOf(['cabinet,drawer,qty,style,opening_w,opening_h', ...rows, ''].join('\n'), 'distinct');
}
