import { beforeEach, describe, expect, test } from 'vitest';
import { openDraft, setCell, settleCell, undo } from '../../renderer/store/changes.ts';
import { demoDraft } from '../../renderer/store/demo-draft.ts';
import { sumInCell } from '../../renderer/store/sum-in-cell.ts';
import { useProgram } from '../../renderer/store/use-program.ts';

const cells = () => useProgram.getState().draft.rows[0]?.cells;
const rowId = () => useProgram.getState().draft.rows[0]?.id ?? '';

describe('sumInCell', () => {
  test('works out sums in the cells of lengths, and leaves everything else', () => {
    expect(sumInCell('opening_w', '18 + 3/8', 'in')).toBe('18-3/8 in');
    expect(sumInCell('box_h', '100 - 12,5', 'mm')).toBe('87.5 mm');
    expect(sumInCell('opening_w', '18-3/8', 'in')).toBeNull();
    expect(sumInCell('opening_w', '18 +', 'in')).toBeNull();
    expect(sumInCell('note', '1 + 1', 'in')).toBeNull();
    expect(sumInCell('qty', '1 + 1', 'in')).toBeNull();
  });
});

describe('settleCell', () => {
  beforeEach(() => openDraft(demoDraft(), { name: null, handle: null }));

  test('turns a typed sum into its length, in one step with the typing', () => {
    const before = cells()?.opening_w;
    setCell(rowId(), 'opening_w', '15 + 1/2');
    settleCell(rowId(), 'opening_w');
    expect(cells()?.opening_w).toBe('15-1/2 in');
    undo();
    expect(cells()?.opening_w).toBe(before);
  });
});
