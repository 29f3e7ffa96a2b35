import { INCH } from '../../../units/inch-fraction.ts';
import type { LengthUnit } from '../../../units/unit.ts';
import { formatLength } from '../../../units/format-length.ts';
import { box, cross, line, point, text } from '../page/draw.ts';
import { listed, paragraph, type Flow } from '../page/paragraph.ts';
import { STROKES } from '../page/strokes.ts';
import type { PaperItem, PaperPage } from '../page/types.ts';
import { sheetFrame, type FrameOf } from '../sheet/sheet-frame.ts';

/** mm. Lengths of the two lines go up in steps of 10 mm or half an inch, as long as they fit: easy to divide by. */
const STEP = { mm: 10, in: INCH / 2 } as const;

/** mm. Side of the square. */
const SQUARE = 100;

/** The longest lines that a page holds, and where to write what they measure. */
export function calibrationPage(frame: Omit<FrameOf, 'id' | 'free'>, unit: LengthUnit): PaperPage {
  const { area, words, measure, settings } = frame;
  const { window } = area;
  const [x0, y0] = [window.x + 8, window.y + 8];
  const long = {
    x: Math.floor((window.w - 14) / STEP[unit]) * STEP[unit],
    y: Math.floor((window.h - 14) / STEP[unit]) * STEP[unit],
  };
  const lengthText = (mm: number) => formatLength(mm, unit);
  const items: PaperItem[] = [
    line(point(x0, y0), point(x0 + long.x, y0), STROKES.thin),
    line(point(x0, y0), point(x0, y0 + long.y), STROKES.thin),
    ...[point(x0, y0), point(x0 + long.x, y0), point(x0, y0 + long.y)].flatMap((at) => cross(at, 4)),
    text(
      `${words.calibration.axes.x}, ${words.calibration.line(lengthText(long.x))}`,
      point(x0 + long.x / 2, y0 - 4.4),
      3.2,
      {
        anchor: 'middle',
        bold: true,
      },
    ),
    text(
      `${words.calibration.axes.y}, ${words.calibration.line(lengthText(long.y))}`,
      point(x0 - 2, y0 + long.y / 2),
      3.2,
      {
        anchor: 'middle',
        bold: true,
        angle: 90,
      },
    ),
  ];
  const column = { x: x0 + 12, width: window.w - 24 };
  let top = window.y + window.h;
  const add = (flow: Flow, air: number) => {
    items.push(...flow.items);
    top = flow.bottom - air;
  };
  add(paragraph(words.calibration.heading, { ...column, top, size: 7, bold: true }, measure), 0.5);
  add(paragraph(words.calibration.used(settings.factors), { ...column, top, size: 3.4 }, measure), 3);
  for (const [index, step] of words.calibration.steps.entries()) {
    add(listed(`${index + 1}`, step, { ...column, top, size: 3.3 }, measure), 1.4);
  }
  for (const axis of ['x', 'y'] as const) {
    items.push(
      ...sum(axis, words.calibration.formula(axis, lengthText(long[axis])), point(column.x, top - 12), frame),
    );
    top -= 16;
  }
  const square = { x: column.x + 4, y: Math.min(top - 6 - SQUARE, y0 + 14 + SQUARE), w: SQUARE, h: SQUARE };
  const room = square.y > y0 + 8;
  if (room) {
    items.push(box(square, STROKES.thin));
    items.push(
      text(words.calibration.square, point(square.x + SQUARE / 2, square.y + SQUARE / 2), 3, {
        anchor: 'middle',
      }),
    );
  }
  return {
    label: words.calibration.page,
    ...area.page,
    items: [area.place([...items, ...sheetFrame({ ...frame, id: words.calibration.page, free: 0 })])],
  };
}

/** `x factor = 160 mm ÷ [ measured ] = [      ]` */
function sum(
  axis: 'x' | 'y',
  formula: string,
  { x, y }: ReturnType<typeof point>,
  { words, measure }: Pick<FrameOf, 'words' | 'measure'>,
): readonly PaperItem[] {
  const size = 4;
  const from = x + measure(formula, size, true) + 3;
  return [
    text(formula, point(x, y + 2.4), size, { bold: true }),
    box({ x: from, y: y - 1, w: 34, h: 10 }, STROKES.thin),
    text(`${words.calibration.measured} ${axis}`, point(from + 17, y - 3.6), 2.4, { anchor: 'middle' }),
    text(words.calibration.result, point(from + 37.5, y + 2.4), size, { bold: true }),
    box({ x: from + 43, y: y - 1, w: 30, h: 10 }, STROKES.thin),
  ];
}
