import { ACCEPTED, extra, GOOD, HEAD, rows, type Malformed } from './case.ts';

/** What can be wrong with the file as a whole: its header, its cells and its quotation marks. */
export const MALFORMED_FILE: readonly Malformed[] = [
  {
    name: 'an empty file',
    csv: '',
    kept: 0,
    findings: [
      [
        'order/empty',
        undefined,
        undefined,
        'The file is empty; its first row must name the columns cabinet, drawer, qty, style, opening_w, opening_h.',
      ],
    ],
  },
  {
    name: 'a file of blank lines',
    csv: '\n \n\t\n',
    kept: 0,
    findings: [
      [
        'order/empty',
        undefined,
        undefined,
        'The file is empty; its first row must name the columns cabinet, drawer, qty, style, opening_w, opening_h.',
      ],
    ],
  },
  {
    name: 'a byte order mark and nothing else',
    csv: '\ufeff',
    kept: 0,
    findings: [
      [
        'order/empty',
        undefined,
        undefined,
        'The file is empty; its first row must name the columns cabinet, drawer, qty, style, opening_w, opening_h.',
      ],
    ],
  },
  {
    name: 'a header only',
    csv: HEAD,
    kept: 0,
    findings: [
      [
        'order/no-rows',
        1,
        undefined,
        'Row 1, the header, has no drawers below it; write one row for each drawer.',
      ],
    ],
  },
  {
    name: 'a header and blank rows',
    csv: `${HEAD}\n,,,,,\n\n`,
    kept: 0,
    findings: [
      [
        'order/no-rows',
        1,
        undefined,
        'Row 1, the header, has no drawers below it; write one row for each drawer.',
      ],
    ],
  },
  {
    name: 'a required column missing',
    csv: 'cabinet,drawer,qty,style,opening_w\nB1,top,1,inset,15-3/4',
    kept: 0,
    findings: [
      [
        'order/column-missing',
        1,
        'opening_h',
        'Row 1, the header, has no column opening_h; add it. Required are cabinet, drawer, qty, style, opening_w, opening_h.',
      ],
    ],
  },
  {
    name: 'no column known',
    csv: 'a,b\n1,2',
    kept: 0,
    findings: [
      [
        'order/column-unknown',
        1,
        'a',
        `Row 1, the header, has the unknown column “a” as cell 1. ${ACCEPTED}`,
      ],
      [
        'order/column-unknown',
        1,
        'b',
        `Row 1, the header, has the unknown column “b” as cell 2. ${ACCEPTED}`,
      ],
      [
        'order/column-missing',
        1,
        'cabinet',
        'Row 1, the header, has no column cabinet; add it. Required are cabinet, drawer, qty, style, opening_w, opening_h.',
      ],
      [
        'order/column-missing',
        1,
        'drawer',
        'Row 1, the header, has no column drawer; add it. Required are cabinet, drawer, qty, style, opening_w, opening_h.',
      ],
      [
        'order/column-missing',
        1,
        'qty',
        'Row 1, the header, has no column qty; add it. Required are cabinet, drawer, qty, style, opening_w, opening_h.',
      ],
      [
        'order/column-missing',
        1,
        'style',
        'Row 1, the header, has no column style; add it. Required are cabinet, drawer, qty, style, opening_w, opening_h.',
      ],
      [
        'order/column-missing',
        1,
        'opening_w',
        'Row 1, the header, has no column opening_w; add it. Required are cabinet, drawer, qty, style, opening_w, opening_h.',
      ],
      [
        'order/column-missing',
        1,
        'opening_h',
        'Row 1, the header, has no column opening_h; add it. Required are cabinet, drawer, qty, style, opening_w, opening_h.',
      ],
    ],
  },
  {
    name: 'a mistyped column',
    csv: 'cabinet,drawer,qty,style,opning_w,opening_h\nB1,top,1,inset,15-3/4,6',
    kept: 0,
    findings: [
      [
        'order/column-unknown',
        1,
        'opning_w',
        `Row 1, the header, has the unknown column “opning_w” as cell 5. Did you mean opening_w? ${ACCEPTED}`,
      ],
    ],
  },
  {
    name: 'a column under a longer name',
    csv: 'cabinet,drawer,qty,style,opening_width,opening_h\nB1,top,1,inset,15-3/4,6',
    kept: 0,
    findings: [
      [
        'order/column-unknown',
        1,
        'opening_width',
        `Row 1, the header, has the unknown column “opening_width” as cell 5. Did you mean opening_w? ${ACCEPTED}`,
      ],
    ],
  },
  {
    name: 'an unknown column',
    csv: extra('colour', 'white'),
    kept: 1,
    findings: [
      [
        'order/column-unknown',
        1,
        'colour',
        `Row 1, the header, has the unknown column “colour” as cell 7. ${ACCEPTED}`,
      ],
    ],
  },
  {
    name: 'a column twice',
    csv: extra('Opening W', '15-3/4'),
    kept: 1,
    findings: [
      [
        'order/column-duplicate',
        1,
        'opening_w',
        'Row 1, the header, has the column opening_w twice, as cells 5 and 7; keep one.',
      ],
    ],
  },
  {
    name: 'a column without a name that holds data',
    csv: `${HEAD},,note\n${GOOD},x,y`,
    kept: 0,
    findings: [
      [
        'order/column-unnamed',
        2,
        undefined,
        'Row 2 reads “x” as cell 7, whose column has no name in the header; name it, or empty the cell.',
      ],
    ],
  },
  {
    name: 'a cell beyond the last column of the header',
    csv: `${HEAD},,\n${GOOD},,x`,
    kept: 0,
    findings: [
      [
        'order/cells',
        2,
        undefined,
        'Row 2 has 8 cells, but the header has 6 columns; write one cell, empty or not, for each column. A comma inside a cell needs quotation marks around the cell.',
      ],
    ],
  },
  {
    name: 'tabs between the cells',
    csv: `${HEAD}\n${GOOD}`.replaceAll(',', '\t'),
    kept: 0,
    findings: [
      [
        'order/delimiter',
        1,
        undefined,
        'Row 1, the header, is separated by tabs; save the file with commas or semicolons between the cells.',
      ],
    ],
  },
  {
    name: 'a cell too few',
    csv: rows('B1,top,1,inset,15-3/4'),
    kept: 0,
    findings: [
      [
        'order/cells',
        2,
        undefined,
        'Row 2 has 5 cells, but the header has 6 columns; write one cell, empty or not, for each column.',
      ],
    ],
  },
  {
    name: 'a cell too many',
    csv: rows('B1,top,1,inset,15-3/4,6,oak'),
    kept: 0,
    findings: [
      [
        'order/cells',
        2,
        undefined,
        'Row 2 has 7 cells, but the header has 6 columns; write one cell, empty or not, for each column. A comma inside a cell needs quotation marks around the cell.',
      ],
    ],
  },
  {
    name: 'a decimal comma between commas',
    csv: rows('B1,top,1,inset,400,5,150'),
    kept: 0,
    findings: [
      [
        'order/cells',
        2,
        undefined,
        'Row 2 has 7 cells, but the header has 6 columns; write one cell, empty or not, for each column. A comma inside a cell needs quotation marks around the cell.',
      ],
    ],
  },
  {
    name: 'a quotation mark never closed',
    csv: rows(GOOD, '"B2,top,1,inset,15-3/4,6', 'B3,top,1,inset,15-3/4,x'),
    kept: 1,
    findings: [
      ['order/quote', 3, undefined, 'Row 3: a quotation mark is opened and never closed; close it.'],
      [
        'order/length',
        4,
        'opening_h',
        'Row 4, opening_h, reads “x”: words are not read; write a number with in, mm or cm, such as 1-7/16 in.',
      ],
    ],
  },
  {
    name: 'text after a closing quotation mark',
    csv: rows('"B1"x,top,1,inset,15-3/4,6', 'B3,top,0,inset,15-3/4,6'),
    kept: 0,
    findings: [
      [
        'order/quote',
        2,
        undefined,
        'Row 2: a quoted cell goes on after its closing quotation mark; write a quotation mark inside a quoted cell twice.',
      ],
      ['order/qty', 3, 'qty', 'Row 3, qty, reads “0”: write a whole number from 1 to 10000.'],
    ],
  },
  {
    name: 'a quotation mark never closed in the header',
    csv: `"cabinet,drawer\n${GOOD}`,
    kept: 0,
    findings: [
      ['order/quote', 1, undefined, 'Row 1: a quotation mark is opened and never closed; close it.'],
    ],
  },
  {
    name: 'a quotation mark after a blank',
    csv: rows('B1, "top",1,inset,15-3/4,6'),
    kept: 0,
    findings: [
      [
        'order/quote',
        2,
        'drawer',
        'Row 2, drawer, reads “"top"”: a quotation mark stands after a blank; put it first in the cell, or leave it out.',
      ],
    ],
  },
];
