import { extra, GOOD, HEAD, rows, type Malformed } from './case.ts';

/** What can be wrong in one cell. */
export const MALFORMED_CELLS: readonly Malformed[] = [
  {
    name: 'every required cell empty but one',
    csv: rows(',,,,15-3/4,'),
    kept: 0,
    findings: [
      [
        'order/required',
        2,
        'cabinet',
        'Row 2, cabinet, is empty; write the name of the cabinet, such as B1.',
      ],
      ['order/required', 2, 'drawer', 'Row 2, drawer, is empty; write the name of the drawer, such as top.'],
      ['order/required', 2, 'qty', 'Row 2, qty, is empty; write how many alike, such as 1.'],
      ['order/required', 2, 'style', 'Row 2, style, is empty; write a style of the shop standard.'],
      [
        'order/required',
        2,
        'opening_h',
        "Row 2, opening_h, is empty; write the opening's height, such as 6 in.",
      ],
    ],
  },
  {
    name: 'a quantity of 0',
    csv: rows('B1,top,0,inset,15-3/4,6'),
    kept: 0,
    findings: [['order/qty', 2, 'qty', 'Row 2, qty, reads “0”: write a whole number from 1 to 10000.']],
  },
  {
    name: 'a negative quantity',
    csv: rows('B1,top,-1,inset,15-3/4,6'),
    kept: 0,
    findings: [['order/qty', 2, 'qty', 'Row 2, qty, reads “-1”: write a whole number from 1 to 10000.']],
  },
  {
    name: 'a broken quantity',
    csv: rows('B1,top,1.5,inset,15-3/4,6'),
    kept: 0,
    findings: [['order/qty', 2, 'qty', 'Row 2, qty, reads “1.5”: write a whole number from 1 to 10000.']],
  },
  {
    name: 'a quantity in words',
    csv: rows('B1,top,two,inset,15-3/4,6'),
    kept: 0,
    findings: [['order/qty', 2, 'qty', 'Row 2, qty, reads “two”: write a whole number from 1 to 10000.']],
  },
  {
    name: 'a quantity over 10000',
    csv: rows('B1,top,10001,inset,15-3/4,6'),
    kept: 0,
    findings: [['order/qty', 2, 'qty', 'Row 2, qty, reads “10001”: write a whole number from 1 to 10000.']],
  },
  {
    name: 'a quantity too long to count',
    csv: rows(`B1,top,${'9'.repeat(70)},inset,15-3/4,6`),
    kept: 0,
    findings: [
      [
        'order/qty',
        2,
        'qty',
        'Row 2, qty, reads “999999999999999999999999999999999999999999999999999999999999…”: write a whole number from 1 to 10000.',
      ],
    ],
  },
  {
    name: 'an unknown style',
    csv: rows('B1,top,1,full overlap,15-3/4,6'),
    kept: 0,
    findings: [
      [
        'order/style',
        2,
        'style',
        'Row 2, style, reads “full overlap”: the shop standard has no such style; write inset, full overlay, partial overlay, inset bevelled (did you mean full overlay?).',
      ],
    ],
  },
  {
    name: 'a length in words',
    csv: rows('B1,top,1,inset,wide,6'),
    kept: 0,
    findings: [
      [
        'order/length',
        2,
        'opening_w',
        'Row 2, opening_w, reads “wide”: words are not read; write a number with in, mm or cm, such as 1-7/16 in.',
      ],
    ],
  },
  {
    name: 'a length of 0',
    csv: rows('B1,top,1,inset,15-3/4,0'),
    kept: 0,
    findings: [
      ['order/length', 2, 'opening_h', 'Row 2, opening_h, reads “0”: the length is 0; write one above 0.'],
    ],
  },
  {
    name: 'a negative length',
    csv: rows('B1,top,1,inset,15-3/4,-6'),
    kept: 0,
    findings: [
      [
        'order/length',
        2,
        'opening_h',
        'Row 2, opening_h, reads “-6”: the length is negative; write one above 0.',
      ],
    ],
  },
  {
    name: 'a fraction with a denominator of 0',
    csv: rows('B1,top,1,inset,15-3/0,6'),
    kept: 0,
    findings: [
      [
        'order/length',
        2,
        'opening_w',
        'Row 2, opening_w, reads “15-3/0”: the fraction has a denominator of 0; write one such as 7/16.',
      ],
    ],
  },
  {
    name: 'a fraction of 1 or more beside a whole number',
    csv: rows('B1,top,1,inset,15 19/16,6'),
    kept: 0,
    findings: [
      [
        'order/length',
        2,
        'opening_w',
        'Row 2, opening_w, reads “15 19/16”: the fraction 19/16 beside a whole number is not below 1; write 16-3/16.',
      ],
    ],
  },
  {
    name: 'a thousands separator',
    csv: rows('B1,top,1,inset,"1,250 mm",6'),
    kept: 0,
    findings: [
      [
        'order/length',
        2,
        'opening_w',
        'Row 2, opening_w, reads “1,250 mm”: the comma before three digits can mean thousands or decimals; write 1250 or 1.250.',
      ],
    ],
  },
  {
    name: 'two decimal separators',
    csv: rows('B1,top,1,inset,"1.250,5 mm",6'),
    kept: 0,
    findings: [
      [
        'order/length',
        2,
        'opening_w',
        'Row 2, opening_w, reads “1.250,5 mm”: there are two decimal separators or a thousands separator; write 1250.5 or 1250,5.',
      ],
    ],
  },
  {
    name: 'an exponent',
    csv: rows('B1,top,1,inset,1e2,6'),
    kept: 0,
    findings: [
      [
        'order/length',
        2,
        'opening_w',
        'Row 2, opening_w, reads “1e2”: exponents are not read; write plain digits, such as 1250.',
      ],
    ],
  },
  {
    name: 'feet',
    csv: rows(`B1,top,1,inset,1' 3",6`),
    kept: 0,
    findings: [
      [
        'order/length',
        2,
        'opening_w',
        `Row 2, opening_w, reads “1' 3"”: feet are not read; write the whole length in inches or millimetres.`,
      ],
    ],
  },
  {
    name: 'two units',
    csv: rows('B1,top,1,inset,400 mm in,6'),
    kept: 0,
    findings: [
      [
        'order/length',
        2,
        'opening_w',
        'Row 2, opening_w, reads “400 mm in”: there is more than one unit, or something after the unit; write one number and one unit, such as 36.5 mm.',
      ],
    ],
  },
  {
    name: 'a length over 10 m',
    csv: rows('B1,top,1,inset,15750,6'),
    kept: 0,
    findings: [
      [
        'order/length',
        2,
        'opening_w',
        'Row 2, opening_w, reads “15750”: the length is more than 10 m; write at most 10000 mm or 393-11/16 in.',
      ],
    ],
  },
  {
    name: 'a date that a spreadsheet made of a fraction',
    csv: rows('B1,top,1,inset,15-Mar,6'),
    kept: 0,
    findings: [
      [
        'order/length',
        2,
        'opening_w',
        'Row 2, opening_w, reads “15-Mar”: this is a date, as spreadsheets make of fractions; write the unit behind the fraction, such as 3/32 in.',
      ],
    ],
  },
  {
    name: 'a date in digits',
    csv: rows('B1,top,1,inset,3/15/2031,6'),
    kept: 0,
    findings: [
      [
        'order/length',
        2,
        'opening_w',
        'Row 2, opening_w, reads “3/15/2031”: there are two fraction bars, as in a date; write one fraction such as 7/16.',
      ],
    ],
  },
  {
    name: 'an unknown kind of cabinet',
    csv: extra('cabinet_kind', 'desk-base'),
    kept: 0,
    findings: [
      [
        'order/cabinet-kind',
        2,
        'cabinet_kind',
        'Row 2, cabinet_kind, reads “desk-base”: the shop standard has no such cabinet kind; write desk base (did you mean desk base?).',
      ],
    ],
  },
  {
    name: 'a column of 0',
    csv: extra('column', '0'),
    kept: 0,
    findings: [['order/column', 2, 'column', 'Row 2, column, reads “0”: write a whole number from 1 to 99.']],
  },
  {
    name: 'a column in words',
    csv: extra('column', 'left'),
    kept: 0,
    findings: [
      ['order/column', 2, 'column', 'Row 2, column, reads “left”: write a whole number from 1 to 99.'],
    ],
  },
  {
    name: 'an unknown position',
    csv: extra('position', 'upper'),
    kept: 0,
    findings: [
      ['order/position', 2, 'position', 'Row 2, position, reads “upper”: write top, middle or bottom.'],
    ],
  },
  {
    name: 'an edge that is a bare length',
    csv: extra('left', '1/8'),
    kept: 0,
    findings: [
      [
        'order/edge',
        2,
        'left',
        'Row 2, left, reads “1/8”: an edge begins with inset, lap, cover or share; write one of: inset GAP, lap OVERLAY, cover W [reveal R], share W gap G [neighbor N].',
      ],
    ],
  },
  {
    name: 'a mistyped edge',
    csv: extra('right', 'insets 1/8'),
    kept: 0,
    findings: [
      [
        'order/edge',
        2,
        'right',
        'Row 2, right, reads “insets 1/8”: an edge begins with inset, lap, cover or share; write one of: inset GAP, lap OVERLAY, cover W [reveal R], share W gap G [neighbor N] (did you mean inset?).',
      ],
    ],
  },
  {
    name: 'an unknown member',
    csv: extra('bottom', 'cover botom-rail'),
    kept: 0,
    findings: [
      [
        'order/edge',
        2,
        'bottom',
        'Row 2, bottom, reads “cover botom-rail”: “botom-rail” is no member; write a width or one of stile, shared-stile, top-rail, mid-rail, bottom-rail (did you mean bottom-rail?).',
      ],
    ],
  },
  {
    name: 'a shared edge without a gap',
    csv: extra('top', 'share mid-rail'),
    kept: 0,
    findings: [
      [
        'order/edge',
        2,
        'top',
        'Row 2, top, reads “share mid-rail”: share needs a gap; write share W gap G [neighbor N].',
      ],
    ],
  },
  {
    name: 'a negative gap',
    csv: extra('left', 'inset -1/8'),
    kept: 0,
    findings: [
      [
        'order/edge',
        2,
        'left',
        'Row 2, left, reads “inset -1/8”: the gap “-1/8” is refused: the length is negative; write one of 0 or more.',
      ],
    ],
  },
  {
    name: 'a reveal wider than its member',
    csv: extra('bottom', 'cover 1 reveal 2'),
    kept: 0,
    findings: [
      [
        'order/edge',
        2,
        'bottom',
        'Row 2, bottom, reads “cover 1 reveal 2”: the reveal is wider than the member; write a reveal of the width at most, or inset GAP.',
      ],
    ],
  },
  {
    name: 'an unknown front',
    csv: extra('front', 'shaker'),
    kept: 0,
    findings: [
      [
        'order/front',
        2,
        'front',
        'Row 2, front, reads “shaker”: write slab, or five-piece and the width of its frame, such as five-piece 2-1/4 in.',
      ],
    ],
  },
  {
    name: 'a five-piece front without a width',
    csv: extra('front', 'five-piece'),
    kept: 0,
    findings: [
      [
        'order/front',
        2,
        'front',
        'Row 2, front, reads “five-piece”: the width of its frame is missing; write one, such as five-piece 2-1/4 in.',
      ],
    ],
  },
  {
    name: 'a five-piece front with a broken width',
    csv: extra('front', 'five-piece wide'),
    kept: 0,
    findings: [
      [
        'order/front',
        2,
        'front',
        'Row 2, front, reads “five-piece wide”: the width of its frame “wide” is refused: words are not read; write a number with in, mm or cm, such as 1-7/16 in.',
      ],
    ],
  },
  {
    name: 'faults in optional lengths',
    csv: `${HEAD},front_w,front_h,box_w,box_h,front_thickness,box_side,box_front\n${GOOD},a,0,-1,1/0,1e1,2 2,1/`,
    kept: 0,
    findings: [
      [
        'order/length',
        2,
        'front_w',
        'Row 2, front_w, reads “a”: words are not read; write a number with in, mm or cm, such as 1-7/16 in.',
      ],
      ['order/length', 2, 'front_h', 'Row 2, front_h, reads “0”: the length is 0; write one above 0.'],
      ['order/length', 2, 'box_w', 'Row 2, box_w, reads “-1”: the length is negative; write one above 0.'],
      [
        'order/length',
        2,
        'box_h',
        'Row 2, box_h, reads “1/0”: the fraction has a denominator of 0; write one such as 7/16.',
      ],
      [
        'order/length',
        2,
        'front_thickness',
        'Row 2, front_thickness, reads “1e1”: exponents are not read; write plain digits, such as 1250.',
      ],
      [
        'order/length',
        2,
        'box_side',
        'Row 2, box_side, reads “2 2”: there is a space between digits; write 22, or a fraction such as 1 7/16.',
      ],
      [
        'order/length',
        2,
        'box_front',
        'Row 2, box_front, reads “1/”: this is not a number; write one such as 1-7/16, 1.4375 or 36,5.',
      ],
    ],
  },
  {
    name: 'a control character in a name',
    csv: rows('B1,to\u0007p,1,inset,15-3/4,6'),
    kept: 0,
    findings: [
      [
        'order/control-character',
        2,
        'drawer',
        'Row 2, drawer, reads “to\\u0007p”: it holds the unprintable character U+0007; type it again.',
      ],
    ],
  },
  {
    name: 'a line break in a name',
    csv: rows('B1,"top\nshelf",1,inset,15-3/4,6'),
    kept: 0,
    findings: [
      [
        'order/line-break',
        2,
        'drawer',
        'Row 2, drawer, reads “top\\u000ashelf”: a name stands on one line; take the line break out.',
      ],
    ],
  },
  {
    name: 'a mark that turns the text around',
    csv: extra('pull', 'bar\u202e96'),
    kept: 0,
    findings: [
      [
        'order/control-character',
        2,
        'pull',
        'Row 2, pull, reads “bar\\u202e96”: it holds the unprintable character U+202E; type it again.',
      ],
    ],
  },
  {
    name: 'a character that an earlier program lost',
    csv: extra('note', 'na\ufffdve'),
    kept: 0,
    findings: [
      [
        'order/encoding',
        2,
        'note',
        'Row 2, note, reads “na�ve”: a character was lost when the file was saved; save it as CSV UTF-8.',
      ],
    ],
  },
  {
    name: 'a name too long',
    csv: rows(`B1,${'x'.repeat(81)},1,inset,15-3/4,6`),
    kept: 0,
    findings: [
      [
        'order/too-long',
        2,
        'drawer',
        'Row 2, drawer, reads “xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…”: it has 81 characters; write 80 at most.',
      ],
    ],
  },
  {
    name: 'a note too long',
    csv: extra('note', 'y'.repeat(501)),
    kept: 0,
    findings: [
      [
        'order/too-long',
        2,
        'note',
        'Row 2, note, reads “yyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyyy…”: it has 501 characters; write 500 at most.',
      ],
    ],
  },
  {
    name: 'many faults in one row',
    csv: rows('B1,top,none,flush,x,y'),
    kept: 0,
    findings: [
      ['order/qty', 2, 'qty', 'Row 2, qty, reads “none”: write a whole number from 1 to 10000.'],
      [
        'order/style',
        2,
        'style',
        'Row 2, style, reads “flush”: the shop standard has no such style; write inset, full overlay, partial overlay, inset bevelled.',
      ],
      [
        'order/length',
        2,
        'opening_w',
        'Row 2, opening_w, reads “x”: words are not read; write a number with in, mm or cm, such as 1-7/16 in.',
      ],
      [
        'order/length',
        2,
        'opening_h',
        'Row 2, opening_h, reads “y”: words are not read; write a number with in, mm or cm, such as 1-7/16 in.',
      ],
    ],
  },
];
