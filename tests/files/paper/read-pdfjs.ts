import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { z } from 'zod';
import type { Point } from '../../../core/geometry/types.ts';
import { straight, type DrawnLine, type Stretch } from './drawn.ts';

/** A line of text and what its capitals take up on the page. */
export interface ReadText {
  readonly text: string;
  readonly box: { readonly x: number; readonly y: number; readonly w: number; readonly h: number };
}

/** A page as pdfjs-dist reads it; lengths in mm. */
export interface ReadPage {
  readonly label: string;
  readonly width: number;
  readonly height: number;
  readonly lines: readonly DrawnLine[];
  readonly texts: readonly ReadText[];
  /** Names of the operators that it is painted with. */
  readonly operators: ReadonlySet<string>;
}

const MM = 25.4 / 72;

type Matrix = readonly [number, number, number, number, number, number];

/** Reads all pages of a PDF. */
export async function readPdf(bytes: Uint8Array): Promise<readonly ReadPage[]> {
  const document = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;
  const labels = (await document.getPageLabels()) ?? [];
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const [x0 = 0, y0 = 0, x1 = 0, y1 = 0] = page.view;
    const { fnArray, argsArray } = await page.getOperatorList();
    const content = await page.getTextContent();
    pages.push({
      label: labels[number - 1] ?? '',
      width: (x1 - x0) * MM,
      height: (y1 - y0) * MM,
      lines: linesOf(fnArray, argsArray),
      texts: content.items.flatMap((item) =>
        'str' in item && item.str.trim() !== ''
          ? [textOf(item.str, item.transform.map(Number), item.width)]
          : [],
      ),
      operators: new Set(fnArray.map(nameOf)),
    });
  }
  await document.destroy();
  return pages;
}

/** Level, or turned a quarter to the left; capitals are 0.7 of the font's size. */
function textOf(
  text: string,
  [, turned = 0, , size = 0, x = 0, y = 0]: readonly number[],
  width: number,
): ReadText {
  const upright = Math.abs(turned) > 1e-6;
  const [long, high] = [width * MM, (upright ? turned : size) * 0.7 * MM];
  return {
    text,
    box: upright
      ? { x: x * MM - high, y: y * MM, w: high, h: long }
      : { x: x * MM, y: y * MM, w: long, h: high },
  };
}

const nameOf = (code: number): string =>
  Object.entries(OPS).find(([, value]) => value === code)?.[0] ?? `${code}`;

function linesOf(codes: readonly number[], args: readonly unknown[]): readonly DrawnLine[] {
  const lines: DrawnLine[] = [];
  let state: { matrix: Matrix; width: number; dashed: boolean } = {
    matrix: [1, 0, 0, 1, 0, 0],
    width: 1,
    dashed: false,
  };
  const stack: (typeof state)[] = [];
  for (const [index, code] of codes.entries()) {
    const given = args[index];
    const list: readonly unknown[] = Array.isArray(given) ? given : [];
    if (code === OPS.save) stack.push(state);
    else if (code === OPS.restore) state = stack.pop() ?? state;
    else if (code === OPS.transform) state = { ...state, matrix: times(state.matrix, list.map(Number)) };
    else if (code === OPS.setLineWidth) state = { ...state, width: Number(list[0]) };
    else if (code === OPS.setDash) state = { ...state, dashed: Array.isArray(list[0]) && list[0].length > 0 };
    else if (code === OPS.constructPath && (list[0] === OPS.stroke || list[0] === OPS.closeStroke)) {
      const [data] = z.tuple([z.instanceof(Float32Array)]).parse(list[1]);
      const { matrix, width, dashed } = state;
      for (const stretches of pathsIn(Array.from(data), matrix)) {
        lines.push({ stretches, width: width * MM, dashed });
      }
    }
  }
  return lines;
}

/** The paths in pdfjs's packed form: 0 moves, 1 draws a line, 2 a curve, 4 closes. */
function pathsIn(data: readonly number[], [a, b, c, d, e, f]: Matrix): readonly (readonly Stretch[])[] {
  const paths: Stretch[][] = [];
  let at = 0;
  let [start, here]: [Point, Point] = [
    { x: 0, y: 0 },
    { x: 0, y: 0 },
  ];
  const take = (): Point => {
    const [x = NaN, y = NaN] = data.slice(at, at + 2);
    at += 2;
    return { x: (a * x + c * y + e) * MM, y: (b * x + d * y + f) * MM };
  };
  while (at < data.length) {
    const code = data[at];
    at += 1;
    if (code === 0) {
      start = take();
      here = start;
      paths.push([]);
    } else if (code === 1) {
      const to = take();
      paths.at(-1)?.push(straight(here, to));
      here = to;
    } else if (code === 2) {
      const [one, two, to] = [take(), take(), take()];
      paths.at(-1)?.push([here, one, two, to]);
      here = to;
    } else if (code === 4) {
      if (Math.hypot(here.x - start.x, here.y - start.y) > 1e-6) paths.at(-1)?.push(straight(here, start));
      here = start;
    } else throw new Error(`readPdf: an unknown path operator ${code}`);
  }
  return paths;
}

function times(
  [a, b, c, d, e, f]: Matrix,
  [g = 1, h = 0, i = 0, j = 1, k = 0, l = 0]: readonly number[],
): Matrix {
  return [a * g + c * h, b * g + d * h, a * i + c * j, b * i + d * j, a * k + c * l + e, b * k + d * l + f];
}
