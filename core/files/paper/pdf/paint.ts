import { segmentsOf } from '../../../geometry/segments.ts';
import type { Contour, Point } from '../../../geometry/types.ts';
import type { ContourItem, GroupItem, PaperItem, Stroke, TextItem } from '../page/types.ts';
import { arcBeziers } from './arc-beziers.ts';
import { BOLD, REGULAR } from './fonts.ts';
import type { Pdf } from './open-document.ts';
import { points } from './units.ts';

/** From the coordinates of items to pdfkit's, in points with y down from the top of the page. */
type ToPage = (point: Point) => Point;

/** Draws items, lowest first, on the page that is open. @param height of the page, mm */
export function paintPage(pdf: Pdf, items: readonly PaperItem[], height: number): void {
  paint(pdf, items, ({ x, y }) => ({ x: points(x), y: points(height - y) }));
}

function paint(pdf: Pdf, items: readonly PaperItem[], toPage: ToPage): void {
  for (const item of items) {
    if (item.kind === 'group') paintGroup(pdf, item, toPage);
    else if (item.kind === 'text') paintText(pdf, item, toPage);
    else paintContours(pdf, item, toPage);
  }
}

function paintGroup(pdf: Pdf, { origin, scale, clip, items }: GroupItem, toPage: ToPage): void {
  const within: ToPage = ({ x, y }) => toPage({ x: origin.x + scale.x * x, y: origin.y + scale.y * y });
  if (clip === undefined) {
    paint(pdf, items, within);
    return;
  }
  const from = within({ x: clip.x, y: clip.y + clip.h });
  const to = within({ x: clip.x + clip.w, y: clip.y });
  pdf.save();
  pdf.rect(from.x, from.y, to.x - from.x, to.y - from.y).clip();
  paint(pdf, items, within);
  pdf.restore();
}

function paintContours(pdf: Pdf, { contours, stroke, fill }: ContourItem, toPage: ToPage): void {
  pdf.save();
  if (stroke !== undefined) setStroke(pdf, stroke);
  if (fill !== undefined) pdf.fillColor(grey(fill));
  for (const contour of contours) trace(pdf, contour, toPage);
  if (stroke !== undefined && fill !== undefined) pdf.fillAndStroke('even-odd');
  else if (fill !== undefined) pdf.fill('even-odd');
  else pdf.stroke();
  pdf.restore();
}

function setStroke(pdf: Pdf, { width, grey: level, dash }: Stroke): void {
  pdf.lineWidth(points(width)).strokeColor(grey(level));
  if (dash !== undefined) pdf.dash(points(dash[0]), { space: points(dash[1]) });
}

function trace(pdf: Pdf, contour: Contour, toPage: ToPage): void {
  const [first, ...others] = segmentsOf(contour);
  if (first === undefined) return;
  const start = toPage(first.start);
  pdf.moveTo(start.x, start.y);
  for (const segment of [first, ...others]) {
    if (segment.kind === 'line') {
      const end = toPage(segment.end);
      pdf.lineTo(end.x, end.y);
      continue;
    }
    for (const curve of arcBeziers(segment)) {
      const [one, two, end] = [toPage(curve[0]), toPage(curve[1]), toPage(curve[2])];
      pdf.bezierCurveTo(one.x, one.y, two.x, two.y, end.x, end.y);
    }
  }
  if (contour.kind !== 'path') pdf.closePath();
}

function paintText(pdf: Pdf, item: TextItem, toPage: ToPage): void {
  const { text, size, anchor, angle, bold } = item;
  const { x, y } = toPage(item.at);
  pdf.font(bold ? BOLD : REGULAR).fontSize(points(size));
  const width = anchor === 'start' && !item.halo ? 0 : pdf.widthOfString(text);
  const left = x - width * { start: 0, middle: 0.5, end: 1 }[anchor];
  pdf.save();
  if (angle !== 0) pdf.rotate(-angle, { origin: [x, y] });
  if (item.halo) {
    const [air, high] = [points(size) * 0.15, points(size) * 0.75];
    pdf.rect(left - air, y - high - air, width + 2 * air, high + 2 * air).fill(grey(1));
  }
  pdf.fillColor(grey(item.grey));
  pdf.text(text, left, y, { lineBreak: false, baseline: 'alphabetic' });
  pdf.restore();
}

/** pdfkit takes three levels of 0 to 255, and writes fewer digits of what it is given as one. */
const grey = (level: number): [number, number, number] => {
  const value = Math.round(level * 255);
  return [value, value, value];
};
