import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import type { Part } from '../parts/types.ts';
import { mmText } from '../units/mm-text.ts';
import type { PartShape } from './part-shape.ts';
import type { StockSheet } from './types.ts';

const sizeText = (width: number, height: number): string => `${mmText(width)} x ${mmText(height)}`;

/** There is nothing to cut a part from. */
export const noStock = ({ id, material, thickness }: Part): Finding =>
  error(
    'sheets/no-stock',
    `Part ${id} is cut from ${mmText(thickness)} ${material}, and there is no sheet of that in stock; add one.`,
    { field: `parts.${id}` },
    { part: id, material, thickness },
  );

/** A part is larger than any sheet of its stock. */
export function tooLarge(
  { part, width, height }: PartShape,
  largest: StockSheet,
  edgeMargin: number,
): Finding {
  const inside = sizeText(
    Math.max(0, largest.width - 2 * edgeMargin),
    Math.max(0, largest.height - 2 * edgeMargin),
  );
  return error(
    'sheets/too-large',
    `Part ${part.id} is ${sizeText(width, height)} and fits no sheet as it may be turned; the largest, "${largest.name}", has ${inside} within its margin.`,
    { field: `parts.${part.id}` },
    {
      part: part.id,
      width,
      height,
      sheet: largest.name,
      sheetWidth: largest.width,
      sheetHeight: largest.height,
      edgeMargin,
    },
  );
}

/** The stock is used up. */
export const shortOfStock = ({ id, material, thickness }: Part, copies: number): Finding =>
  error(
    'sheets/short-of-stock',
    `The sheets of ${mmText(thickness)} ${material} are used up: ${copies === 1 ? '1 copy' : `${copies} copies`} of part ${id} found no room; add a sheet.`,
    { field: `parts.${id}` },
    { part: id, copies, material, thickness },
  );
