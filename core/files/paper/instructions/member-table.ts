import { drawerName } from '../../../fit/drawer-name.ts';
import { EDGES } from '../../../order/types.ts';
import { formatLength } from '../../../units/format-length.ts';
import { formatSize } from '../../../units/format-size.ts';
import { line, point, text } from '../page/draw.ts';
import { shorten } from '../page/shorten.ts';
import type { Flow } from '../page/paragraph.ts';
import { STROKES } from '../page/strokes.ts';
import type { PaperItem, TextWidth } from '../page/types.ts';
import type { PaperWords } from '../words/en.ts';
import { sharedOverhangs } from './shared-overhangs.ts';
import { membersOf, type PaperSetup, type SetupMember } from './types.ts';

const SIZE = 3;
const ROW = 4.6;

/** More drawers than this are only counted. */
const MOST = 8;

/** Widths of the columns against each other. */
const SHARES = { name: 8, drawer: 30, qty: 5, front: 20, box: 20, overhang: 13, template: 10 } as const;

interface TableColumn {
  readonly share: number;
  readonly head: string;
  readonly cell: (member: SetupMember, name: string) => string;
}

/** The drawers that a sheet is for, with their sizes and the overhangs that they don't have in common. */
export function memberTable(
  setup: PaperSetup,
  { x, top, width }: { readonly x: number; readonly top: number; readonly width: number },
  words: PaperWords,
  measure: TextWidth,
): Flow {
  const all = setup.variants.flatMap(({ name, members }) => members.map((member) => ({ name, member })));
  const shown = all.length > MOST ? all.slice(0, MOST - 1) : all;
  const columns = columnsOf(setup, words);
  const total = columns.reduce((sum, { share }) => sum + share, 0);
  const base = (index: number): number => top - 3.4 - index * ROW;
  const row = (cellOf: (column: TableColumn) => string, y: number, bold: boolean): readonly PaperItem[] => {
    let left = x;
    return columns.map((column) => {
      const room = (column.share / total) * width;
      left += room;
      return text(shorten(cellOf(column), room - 1.5, SIZE, measure, bold), point(left - room, y), SIZE, {
        bold,
      });
    });
  };
  const rest = all.length - shown.length;
  return {
    items: [
      ...row(({ head }) => head, base(0), true),
      line(point(x, base(0) - 1.3), point(x + width, base(0) - 1.3), STROKES.rule),
      ...shown.flatMap(({ name, member }, index) =>
        row(({ cell }) => cell(member, name), base(index + 1), false),
      ),
      ...(rest > 0 ? [text(words.sheets.more(rest), point(x, base(shown.length + 1)), SIZE)] : []),
    ],
    bottom: base(shown.length + (rest > 0 ? 1 : 0)) - 2.5,
  };
}

function columnsOf(setup: PaperSetup, words: PaperWords): readonly TableColumn[] {
  const heads = words.sheets.columns;
  const shared = sharedOverhangs(membersOf(setup));
  return [
    { share: SHARES.name, head: heads.name, cell: (_, name) => name },
    { share: SHARES.drawer, head: heads.drawer, cell: ({ fit }) => drawerName(fit.drawer) },
    { share: SHARES.qty, head: heads.qty, cell: ({ fit }) => `${fit.drawer.qty}` },
    {
      share: SHARES.front,
      head: heads.front,
      cell: ({ fit }) => formatSize(fit.frontW, fit.frontH, fit.unit),
    },
    { share: SHARES.box, head: heads.box, cell: ({ fit }) => formatSize(fit.boxW, fit.boxH, fit.unit) },
    ...EDGES.filter((edge) => !shared.includes(edge)).map((edge): TableColumn => ({
      share: SHARES.overhang,
      head: words.capitalEdges[edge],
      cell: ({ fit }) => formatLength(fit.overhang[edge], fit.unit),
    })),
    {
      share: SHARES.template,
      head: heads.template,
      cell: ({ template }) => template ?? words.checklist.none,
    },
  ];
}
