import type { Finding } from '../findings/finding.ts';
import { error, hasErrors, warning } from '../findings/make.ts';
import {
  readCabinetKindCell,
  readColumnCell,
  readEdgeCell,
  readFrontCell,
  readLengthCell,
  readPositionCell,
  readQtyCell,
  readSpeciesCell,
  readStyleCell,
  type CellReader,
} from './cell-readers.ts';
import { REQUIRED_COLUMNS, type OrderColumn } from './columns.ts';
import { defined } from './defined.ts';
import { placeWords, type OrderTerms, type RawRow } from './raw-row.ts';
import { parsePullChoice } from './pull-choice.ts';
import { quoteText } from './quote-text.ts';
import { readNameCell, readNoteCell } from './text-cell.ts';
import {
  EDGES,
  type Drawer,
  type Edge,
  type EdgeCondition,
  type Position,
  type PullChoice,
} from './types.ts';

/** A drawer whose place in its stack is not known yet. */
export type LooseDrawer = Omit<Drawer, 'position' | 'first' | 'last'>;

/** What a row says of its cabinet, even when another of its cells is wrong. */
export interface RowIdentity {
  readonly room: string;
  readonly cabinet?: string;
  readonly kind?: string;
  readonly drawer?: string;
  readonly column?: number;
  readonly qty?: number;
  /** The position that the row gives itself. */
  readonly position?: Position;
}

export interface ReadRow {
  readonly raw: RawRow;
  readonly identity: RowIdentity;
  /** Absent when a cell was wrong. */
  readonly drawer?: LooseDrawer;
}

const WRITE_WHAT: Readonly<Partial<Record<OrderColumn, string>>> = {
  cabinet: 'the name of the cabinet, such as B1',
  drawer: 'the name of the drawer, such as top',
  qty: 'how many alike, such as 1',
  style: 'a style of the shop standard',
  opening_w: "the opening's width, such as 15-3/4 in",
  opening_h: "the opening's height, such as 6 in",
};

/** Characters of any cell; each kind of cell takes far fewer. */
const LONGEST_CELL = 5000;

const tooLong = ({ length }: string) =>
  ({
    ok: false,
    code: 'order/too-long',
    reason: `it has ${length} characters; no cell takes more than ${LONGEST_CELL}, and most far fewer`,
  }) as const;

/** Reads every cell of a row and reports every one that is wrong. `columns` are those that the file has. */
export function readRow(
  raw: RawRow,
  terms: OrderTerms,
  columns: readonly OrderColumn[],
): { readonly row: ReadRow; readonly findings: readonly Finding[] } {
  const findings: Finding[] = [];
  const cell = <T>(column: OrderColumn, read: CellReader<T>): T | undefined => {
    const text = raw.cells[column];
    const at = raw.at(column);
    if (text === undefined) {
      if (REQUIRED_COLUMNS.includes(column) && columns.includes(column)) {
        const message = `${placeWords(at)} is empty; write ${WRITE_WHAT[column] ?? 'a value'}.`;
        findings.push(error('order/required', message, at));
      }
      return undefined;
    }
    const result = text.length > LONGEST_CELL ? tooLong(text) : read(text, terms);
    if (result.ok) return result.value;
    findings.push(
      error(result.code, `${placeWords(at)} reads ${quoteText(text)}: ${result.reason}.`, at, { read: text }),
    );
    return undefined;
  };

  /** A pull is free text: what is not understood is told, and its holes are not known. */
  const pullOf = (text: string): PullChoice | undefined => {
    const read = parsePullChoice(text, terms.pulls);
    if (read.ok) return read.choice;
    const at = raw.at('pull');
    const message = `${placeWords(at)} reads ${quoteText(text)}: ${read.reason}. Until then nothing is known of its holes.`;
    findings.push(warning('order/pull-unknown', message, at, { read: text }));
    return undefined;
  };

  const cabinet = cell('cabinet', readNameCell);
  const drawer = cell('drawer', readNameCell);
  const qty = cell('qty', readQtyCell);
  const style = cell('style', readStyleCell);
  const openingW = cell('opening_w', readLengthCell);
  const openingH = cell('opening_h', readLengthCell);
  const column = cell('column', readColumnCell);
  const position = cell('position', readPositionCell);
  const room = cell('room', readNameCell);
  const cabinetKind = cell('cabinet_kind', readCabinetKindCell);
  const edges: Partial<Record<Edge, EdgeCondition>> = {};
  for (const edge of EDGES) {
    const condition = cell(edge, readEdgeCell);
    if (condition !== undefined) edges[edge] = condition;
  }
  const front = cell('front', readFrontCell) ?? { kind: 'slab' };
  const pull = cell('pull', readNameCell);
  const options = defined({
    room,
    cabinetKind,
    frontW: cell('front_w', readLengthCell),
    frontH: cell('front_h', readLengthCell),
    boxW: cell('box_w', readLengthCell),
    boxH: cell('box_h', readLengthCell),
    boxD: cell('box_d', readLengthCell),
    frontThickness: cell('front_thickness', readLengthCell),
    species: cell('species', readSpeciesCell),
    boxSide: cell('box_side', readLengthCell),
    boxFront: cell('box_front', readLengthCell),
    pull,
    pullChoice: pull === undefined ? undefined : pullOf(pull),
    note: cell('note', readNoteCell),
  });
  const identity: RowIdentity = {
    room: room ?? raw.cells.room ?? '',
    // An empty cell is the first column; a wrong one is unknown.
    ...defined({ cabinet, drawer, qty, position, kind: cabinetKind ?? raw.cells.cabinet_kind }),
    ...defined({ column: raw.cells.column === undefined ? 1 : column }),
  };
  const whole = defined({ cabinet, drawer, qty, style, openingW, openingH });
  if (hasErrors(findings) || !isWhole(whole)) return { row: { raw, identity }, findings };
  const read: LooseDrawer = { row: raw.row, ...whole, ...options, column: column ?? 1, edges, front };
  return { row: { raw, identity, drawer: read }, findings };
}

type Whole = Pick<LooseDrawer, 'cabinet' | 'drawer' | 'qty' | 'style' | 'openingW' | 'openingH'>;

const isWhole = (fields: Partial<Whole>): fields is Whole => Object.keys(fields).length === 6;
