import { drawerName } from '../../../fit/name.ts';
import { formatSize } from '../../../units/format-size.ts';
import { line, point, text } from '../page/draw.ts';
import { shorten } from '../page/shorten.ts';
import type { Flow } from '../page/paragraph.ts';
import { STROKES } from '../page/strokes.ts';
import type { PaperItem, TextWidth } from '../page/types.ts';
import type { PaperWords } from '../words/en.ts';
import type { PaperSetup, SetupMember } from './types.ts';

/** Shares of the width at which the columns begin. */
const AT = { drawer: 0, qty: 0.42, front: 0.48, box: 0.68, template: 0.89 } as const;
const COLUMNS = ['drawer', 'qty', 'front', 'box', 'template'] as const;

const SIZE = 3;
const ROW = 4.6;

/** More drawers than this are only counted. */
const MOST = 8;

/** The drawers that a sheet is for, with their sizes. */
export function memberTable(
  { members }: PaperSetup,
  { x, top, width }: { readonly x: number; readonly top: number; readonly width: number },
  words: PaperWords,
  measure: TextWidth,
): Flow {
  const shown = members.length > MOST ? members.slice(0, MOST - 1) : members;
  const row = (
    cells: Readonly<Record<keyof typeof AT, string>>,
    y: number,
    bold: boolean,
  ): readonly PaperItem[] =>
    COLUMNS.map((column, index) => {
      const next = COLUMNS[index + 1];
      const room = ((next === undefined ? 1 : AT[next]) - AT[column]) * width - 2;
      return text(shorten(cells[column], room, SIZE, measure, bold), point(x + AT[column] * width, y), SIZE, {
        bold,
      });
    });
  const base = (index: number): number => top - 3.4 - index * ROW;
  const rest = members.length - shown.length;
  return {
    items: [
      ...row(words.sheets.columns, base(0), true),
      line(point(x, base(0) - 1.3), point(x + width, base(0) - 1.3), STROKES.rule),
      ...shown.flatMap((member, index) => row(cellsOf(member, words), base(index + 1), false)),
      ...(rest > 0 ? [text(words.sheets.more(rest), point(x, base(shown.length + 1)), SIZE)] : []),
    ],
    bottom: base(shown.length + (rest > 0 ? 1 : 0)) - 2.5,
  };
}

const cellsOf = ({ fit, template }: SetupMember, words: PaperWords) => ({
  drawer: drawerName(fit.drawer),
  qty: `${fit.drawer.qty}`,
  front: formatSize(fit.frontW, fit.frontH, fit.unit),
  box: formatSize(fit.boxW, fit.boxH, fit.unit),
  template: template ?? words.checklist.none,
});
