import { GOOD, HEAD, rows, type Malformed } from './case.ts';

/** What can be wrong between the rows of one cabinet. */
export const MALFORMED_CABINETS: readonly Malformed[] = [
  {
    name: 'a drawer name twice in one cabinet',
    csv: rows(GOOD, 'B1,Top,1,inset,15-3/4,6'),
    kept: 1,
    findings: [
      [
        'order/drawer-duplicate',
        3,
        'drawer',
        'Row 3, drawer, reads “Top”, and so does row 2 of the same cabinet; give each drawer its own name.',
      ],
    ],
  },
  {
    name: 'rows of one cabinet apart',
    csv: rows(GOOD, 'B2,top,1,inset,15-3/4,6', 'b1,bottom,1,inset,15-3/4,6'),
    kept: 2,
    findings: [
      [
        'order/cabinet-split',
        4,
        'cabinet',
        "Row 4, cabinet, reads “b1”, but the rows of that cabinet ended at row 2; put a cabinet's rows together, or give two cabinets two names.",
      ],
    ],
  },
  {
    name: 'columns with a gap',
    csv: `${HEAD},column\n${GOOD},1\nB1,other,1,inset,15-3/4,6,3`,
    kept: 1,
    findings: [
      [
        'order/column-gap',
        3,
        'column',
        "Row 3, column, reads “3”, but the cabinet has no column 2; number the columns 1, 2, 3 from the cabinet's left.",
      ],
    ],
  },
  {
    name: 'no first column',
    csv: `${HEAD},column\n${GOOD},2`,
    kept: 0,
    findings: [
      [
        'order/column-gap',
        2,
        'column',
        "Row 2, column, reads “2”, but the cabinet has no column 1; number the columns 1, 2, 3 from the cabinet's left.",
      ],
    ],
  },
  {
    name: 'two quantities in one cabinet',
    csv: rows(GOOD, 'B1,bottom,2,inset,15-3/4,6'),
    kept: 2,
    findings: [
      [
        'order/qty-differs',
        3,
        'qty',
        'Row 3, qty, reads “2”, but row 2 of the same cabinet reads “1”: qty repeats the whole cabinet, so write the same in each row, and give stacked drawers rows of their own.',
      ],
    ],
  },
  {
    name: 'two kinds of one cabinet',
    csv: `${HEAD},cabinet_kind\n${GOOD},desk base\nB1,bottom,1,inset,15-3/4,6,`,
    kept: 1,
    findings: [
      [
        'order/kind-differs',
        3,
        'cabinet_kind',
        'Row 3, cabinet_kind, is empty, but row 2 of the same cabinet reads “desk base”; write the same kind in each row of a cabinet.',
      ],
    ],
  },
  {
    name: 'rows from bottom to top',
    csv: `${HEAD},position\n${GOOD},bottom\nB1,other,1,inset,15-3/4,6,top`,
    kept: 1,
    findings: [
      [
        'order/position-order',
        3,
        'position',
        "Row 3, position, reads “top”, below a drawer that is “bottom” in the same column; list a cabinet's drawers from top to bottom, with one top and one bottom drawer at most.",
      ],
    ],
  },
  {
    name: 'two bottom drawers in one column',
    csv: `${HEAD},position\nB1,a,1,inset,15,6,bottom\nB1,b,1,inset,15,6,`,
    kept: 1,
    findings: [
      [
        'order/position-order',
        3,
        'position',
        "Row 3, position, is “bottom”, below a drawer that is “bottom” in the same column; list a cabinet's drawers from top to bottom, with one top and one bottom drawer at most.",
      ],
    ],
  },
  {
    name: 'a gap beside a row that cannot be read is not told, as its column may stand there',
    csv: `${HEAD},column\n${GOOD},1\nB1,mid,1,inset,15,6\nB1,other,1,inset,15-3/4,6,3\nB2,top,1,inset,15,6,2`,
    kept: 1,
    findings: [
      [
        'order/cells',
        3,
        undefined,
        'Row 3 has 6 cells, but the header has 7 columns; write one cell, empty or not, for each column.',
      ],
      [
        'order/column-gap',
        5,
        'column',
        "Row 5, column, reads “2”, but the cabinet has no column 1; number the columns 1, 2, 3 from the cabinet's left.",
      ],
    ],
  },
];
