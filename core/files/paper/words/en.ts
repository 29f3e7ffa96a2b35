import { CAUTIONS } from '../../../cautions/cautions.ts';
import type { Edge } from '../../../order/types.ts';

/** The edges of the box that a screw may lean towards. */
type LeanEdge = 'side' | 'bottom' | 'top';

type Words<Name extends string> = Readonly<Record<Name, string>>;

/**
 * Every word on paper, in English. Another language is one more file like this one, of type `PaperWords`.
 * Lengths arrive as texts in the shop's unit.
 */
export const EN = {
  language: 'en',
  /** Sides are those of someone who faces the closed cabinet, and say so. */
  edges: { left: 'cabinet left', right: 'cabinet right', top: 'top', bottom: 'bottom' } as Words<Edge>,
  capitalEdges: { left: 'Cabinet left', right: 'Cabinet right', top: 'Top', bottom: 'Bottom' } as Words<Edge>,

  and: ' and ',
  or: ' or ',
  bitOr: (metric: string, inches: string): string => `${metric}, or ${inches}`,

  bars: {
    mm: '100 mm',
    inches: '4 in',
    both: '100 mm, 4 in on the other side',
  },
  sheetNames: { either: 'A4 or letter', long: 'one long page' },
  printTrue: 'Print at 100 % (actual size), one-sided, with no “fit to page”.',
  foot: (factors: { readonly x: number; readonly y: number }): readonly string[] => [
    'Bars off? Set scaling to 100 %.',
    'Still off? Calibration page.',
    factors.x === 1 && factors.y === 1
      ? 'Printer factors: x 1, y 1.'
      : `Printer factors: x ${factors.x}, y ${factors.y}.`,
  ],

  tiles: {
    joins: (page: string): string => `joins ${page}`,
    about: (drawers: string, order: string): string => `back view   ${drawers}   ${order}`,
  },

  template: {
    lean: (degrees: number): string => `${degrees}°`,
    drawer: (name: string, qty: number): string => (qty === 1 ? name : `${name} (${qty})`),
    more: (count: number): string => `and ${count} more, see the first page`,
    front: (size: string): string => `Front ${size}`,
    box: (size: string): string => `Box ${size}`,
    bevel: (degrees: number): string =>
      `Back bevel ${degrees}°: fold at the edge of the back; overhangs are from the face`,
    handed: [
      'CABINET LEFT',
      'Handed: do not turn it over.',
      'Front lies face down,',
      'so left and right swap.',
    ],
    cross: (pilot: string | null, clearance: string | null): string =>
      [
        'Cross: screw, at the back of the front',
        ...(pilot === null ? [] : [`Pilot ${pilot}`]),
        ...(clearance === null ? [] : [`Box front clearance ${clearance}`]),
      ].join('. '),
    circle: (screw: string | null): string =>
      screw === null
        ? 'Circle: its head, inside the box front'
        : `Circle: its head, inside the box front. ${screw}`,
    pull: (diameter: string): string => `Cross in a small circle: pull hole, ${diameter}`,
    noScrews: 'No screws planned: choose one before you drill.',
    lines: (bevelled: boolean): readonly string[] => [
      'Heavy line: box. Long dashes: fold. Outer line: cut.',
      bevelled
        ? 'Short dashes: inside of the box sides, and edge of the face.'
        : 'Short dashes: inside of the box sides.',
    ],
    fold: 'fold down over the edge',
  },

  templates: {
    title: (order: string): string => `Templates, ${order}`,
    cover: 'Cover',
    continued: (page: number): string => `Cover ${page}`,
    map: (page: number): string => `Map ${page}`,
    heading: 'Paper templates',
    about: (sheet: string, templates: number, pages: number): string =>
      `${templates} ${templates === 1 ? 'template' : 'templates'} on ${pages} ${pages === 1 ? 'page' : 'pages'}, ${sheet}.`,
    steps: [
      'Print this page first, at 100 %. Measure the two bars below: both must be 100 mm (or 4 in) long.',
      'If a bar is off, switch off “fit to page” and any scaling. If it is still off, print the calibration page, measure its lines, and enter the two factors that it leads to.',
      'Join the pages of a template over their crosses: cut one page along its edge, lay it on its neighbor until every cross covers the other, and tape. The maps show which page goes where.',
      'Cut along the outer line. Fold the strips down over the edges of the front, which lies face down, the arrow to the cabinet’s left. The paper must lie flat and meet all edges: if it does not, measure the front before you go on.',
      'Prick through the paper with an awl: the corners of the heavy line, and the crosses of the pull’s holes, which are those in a small circle.',
      'Take the paper off before the box comes on. Put a flat scrap board under the front, and drill the pull’s holes square and right through into the board.',
      'Stand the box on the back of the front, its front down and its corners on the marks, and clamp it. Drill the screws from inside the box, as the instructions say.',
      'A screw with an arrow leans: never drill straight at its cross. Its bit goes in at the circle, inside the box, and leans along the arrow by the angle beside it.',
    ],
    columns: { id: 'Template', pages: 'Pages', drawers: 'For these drawers' },
    mapHeading: 'How the pages go together',
    mapAbout: 'Seen as printed: the back view, the cabinet’s left at the right.',
  },

  calibration: {
    title: 'Calibration of a printer',
    page: 'Calibration',
    heading: 'Calibration page',
    steps: [
      'Print this page alone, at 100 % (actual size), on the paper and from the tray that the templates will use.',
      'Lay a steel rule along each line and measure from the middle of one cross to the middle of the other, to a quarter of a millimetre (1/64 in) or better.',
      'Write what you measure into the boxes and divide. Enter the two factors with the paper’s settings; 0.97 to 1.03 can be made good, more than that is a wrong print setting.',
      'Print it again with the factors entered: both lines must now measure what they say.',
      'Measure the two diagonals of the square too. If they differ by more than 0.5 mm (1/64 in), the printer feeds the paper askew: no factor makes that good.',
    ],
    line: (length: string): string => `should measure ${length}`,
    square: '100 mm square (3.937 in); diagonals 141.4 mm (5.568 in)',
    formula: (axis: 'x' | 'y', length: string): string => `${axis} factor  =  ${length}  ÷`,
    measured: 'measured',
    result: '=',
    axes: { x: 'x: across the short side', y: 'y: along the long side' },
    used: (factors: { readonly x: number; readonly y: number }): string =>
      `Printed with x ${factors.x}, y ${factors.y}.`,
  },

  sheets: {
    title: (order: string): string => `Instructions, ${order}`,
    label: (number: number): string => `Sheet ${number}`,
    heading: (number: number, of: number): string => `Setup ${number} of ${of}`,
    columns: {
      name: 'Setup',
      drawer: 'Drawer',
      qty: 'Qty',
      front: 'Front',
      box: 'Box',
      template: 'Template',
    },
    more: (count: number): string => `and ${count} more: see the checklist`,
    notToScale: 'Pictures are not to scale.',
    picture: (jig: string, edges: string): string => `${jig}, ${edges}`,
    pictureTemplate: (drawer: string): string => `Front face down, ${drawer}`,
    box: 'box',
    numbers: 'Numbers',
    overhang: (edge: string, length: string): string => `${edge} overhang: ${length}`,
    screw: (name: string): string => `Screws: ${name}`,
    pilot: (diameter: string): string => `Pilot bit: ${diameter}`,
    clearance: (diameter: string): string => `Clearance in the box front: ${diameter}`,
    depth: (depth: string): string =>
      `Depth stop: ${depth} of bit from the inside of the box front; with a drill guide, what is engraved on it`,
    cornerHead: (end: string, hand: string): string => `${end}, ${hand}`,
    screws: 'Screws at the corners of the box',
    screwsAbout:
      'Each corner: its drill guide, then for each screw its lean to the outside, how far from the inside of the box side, and how far up or down from the box’s edge. Without a guide, also which edge the tip of the bit goes towards.',
    pull: 'Pull',
    byHand: 'by hand',
    firstBores: (guide: string, count: number): string =>
      count === 1 ? `${guide}, first bore` : `${guide}, first ${count} bores`,
    screwAt: (degrees: number, side: string, end: string, way: string, byHand: boolean): string =>
      `${degrees}°  ${side} × ${end}${way}${byHand ? ' by hand' : ''}`,
    /** Which way the tip of a bit goes that no guide leads; a bit that leans two ways has an angle for each. */
    leanWay: (edges: readonly { readonly edge: LeanEdge; readonly degrees: number }[]): string =>
      edges.length === 1
        ? ` to ${edges[0]?.edge ?? ''}`
        : ` (${edges.map(({ edge, degrees }) => `${degrees}° to ${edge}`).join(', ')})`,
    noScrew:
      'No screw of the shop’s stock keeps all limits here: see what the program says of this drawer. Whatever you take must bite into solid wood and end well short of the face.',
    adjuster: (startLow: string): string =>
      `Adjusters: set the height to its lowest and the rest to the middle before you begin. The front starts ${startLow} low on purpose.`,
    adjusterHigh: (high: string): string =>
      `Adjusters: set them all to the middle before you begin. The shared jig hangs the front ${high} high.`,
    adjusterSide: (length: string, way: string): string =>
      `Side adjuster: move the front ${length} to the ${way}. The shared jig sets it off by that.`,
    adjusterMiddle: 'Adjusters: set them all to the middle before you begin.',
    steps: 'Steps',
    lay: 'Lay the front face down on a clean, soft, flat bench. The cabinet’s left is now at your right.',
    seat: (jig: string, edges: string): string =>
      `Seat jig ${jig} at the ${edges} edge and push until the whole lip touches.`,
    /** By the kind of jig. */
    seats: {
      'bottom fence': (jig, edges) =>
        `Seat jig ${jig} at the ${edges} edge: hook its lip behind the edge and push until the whole lip touches.`,
      'side spacer': (jig, edges) =>
        `Seat jig ${jig} at the ${edges} edge: hook its lip behind the edge and push until the whole lip touches.`,
      'step profile': (jig, edges) =>
        `Seat jig ${jig} at the ${edges} edge: stand it on the back of the front, press its lip flat to the edge and hold it there. Set one end of the edge, then move it to the other.`,
      'corner fence': (jig, edges) =>
        `Seat jig ${jig} over the lower corner (${edges}): hook both lips behind the edges and push until both touch.`,
    } as Readonly<Record<string, (jig: string, edges: string) => string>>,
    labelUp: (length: string): string => `The label on top must say ${length}.`,
    setBox:
      'Stand the box on the back of the front, its front down, and slide it until it touches every jig along the whole face.',
    paper: (template: string): string =>
      `Fold template ${template} over the front’s edges, arrow to the cabinet’s left, and tape it. Prick through it with an awl: the corners of the heavy line, and the crosses of the pull’s holes where it has any. Take the paper off.`,
    measureIn:
      'Mark the overhangs on the back of the front at both ends of each edge, and stand the box on the marks, its front down.',
    setOnMarks:
      'Stand the box on the back of the front, its front down, with its corners on the marks. No paper may be left between them.',
    clamp: 'Clamp the box to the front. Check that nothing has moved.',
    stop: (reasons: readonly string[]): string =>
      ['Stop here, and do not drill: no screw in stock keeps all limits. Choose one first.', ...reasons].join(
        ' ',
      ),
    reason: (
      drawer: string,
      place: string,
      screw: string,
      against: string,
      { is, least, isPast }: { readonly is: string; readonly least: string; readonly isPast: boolean },
    ): string =>
      `${drawer}: in ${place}, ${screw} comes nearest: ${isPast ? `it goes ${is} past ${against}, and must keep ${least} from it` : `there is ${is} at ${against}, where ${least} must be`}.`,
    drillMarked:
      'Mark the screws inside the box by the table. Set the depth stop and drill the pilot holes from inside the box.',
    guides:
      'Seat each drill guide of the table in its corner of the box. Set the depth stop that is engraved on it, and drill the pilot holes through its bores.',
    drillOthers:
      'Where the table says “by hand”, mark the screw inside the box by its numbers and drill it with the depth stop set.',
    leanByHand:
      'A screw without a guide that leans: set a sliding bevel to the angle of the table, stand it beside the bit, and lean the bit by it, the tip towards the edge that is named. Measure the depth along the lean. Try it on scrap first.',
    clear: (bit: string, depth: string, leans: boolean, deeper: readonly string[]): string =>
      `Leave the clamp on${leans ? ', keep to each hole’s lean' : ''}, and open the holes in the box front only, from inside, with the ${bit} bit. Depth stop: ${depth}, the box front’s thickness${deeper.map((more) => `; ${more}`).join('')}. The screws then turn freely in it and draw the front tight.`,
    clearLeaning: (degrees: number, depth: string): string => `${depth} at ${degrees}°`,
    takeGuidesOut: 'Take the drill guides out.',
    pulls: (templates: string): string =>
      `Put a flat scrap board under the front. Hook pull template ${templates} over its edges, clamp it, and drill the pull’s holes right through into the board.`,
    somePulls: (templates: string): string =>
      `Where the table names a pull template (${templates}): put a flat scrap board under the front, hook the template over its edges, clamp it, and drill the pull’s holes right through into the board.`,
    pullsOnPaper: (others: boolean): string =>
      `${others ? 'Where it names none, the' : 'The'} drawer’s paper template has the places of the pull’s holes: fold it over the front’s edges, arrow to the cabinet’s left, and prick their crosses with an awl. Take the paper off, put a flat scrap board under the front, and drill them right through into the board.`,
    pullsPricked:
      'Put a flat scrap board under the front, and drill the pull’s holes right through into the board at the pricked crosses.',
    pullsInBox:
      'Where the pull’s holes lie on the box front: clamp a scrap board behind the box front and drill on through it, from the face through the pull’s holes. The pull’s screws must be long enough for front and box front together; if they are not, counterbore the box front from inside.',
    drive: 'Drive the screws until they are snug, and no further.',
    lift: 'Slide the jigs straight out. Keep them for the next drawer of this setup.',
    hang: (startLow: string): string =>
      `Hang the drawer. Its front sits ${startLow} low: raise it with the height adjusters until its gaps are even.`,
    hangTouching: (startLow: string): string =>
      `Hang the drawer, but do not close it yet: its front sits ${startLow} low and would touch what is below it. Raise it with the height adjusters before you close the drawer, then even out its gaps.`,
    hangHigh: (high: string): string =>
      `Hang the drawer. Its front sits ${high} high: lower it with the height adjusters until its gaps are even.`,
    hangSide: (length: string, way: string): string =>
      `Move the front ${length} to the ${way} with the side adjuster: the shared jig set it off by that.`,
    hangMiddle: 'Hang the drawer and even out its gaps with the adjusters.',
    cautions: 'Take care',
    cautionList: CAUTIONS,
    checks: 'Check before the next drawer',
    check: (lengths: string): string => `Overhangs measured at both ends of each edge: ${lengths}`,
    othersInTable: 'others as listed above',
    checkTip: 'No screw shows or bulges at the face',
    checkSquare: 'Box square to the front, screws snug',
  },

  checklist: {
    title: (order: string): string => `Checklist, ${order}`,
    label: (page: number): string => `Checklist ${page}`,
    heading: 'Checklist',
    page: (page: number, of: number): string => `Page ${page} of ${of}`,
    columns: {
      drawer: 'Drawer',
      template: 'Template',
      setup: 'Setup',
      jigs: 'Jigs',
      overhangs: 'Overhangs L · R · B · T',
      jig: 'Jig set',
      measured: 'Size checked',
      fixed: 'Front fixed',
      gaps: 'Gaps checked',
    },
    each: (index: number, of: number): string => `${index} of ${of}`,
    none: '–',
    legend:
      'L and R: cabinet left and right, for someone who faces the closed cabinet. B and T: bottom and top.',
  },
};

export type PaperWords = typeof EN;
