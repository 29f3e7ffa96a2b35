import type { Finding } from '../findings/finding.ts';
import { fitOrder } from '../fit/fit-order.ts';
import { drawerName } from '../fit/drawer-name.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { Draft } from '../project/draft.ts';
import { SAME_LENGTH, sameLength } from '../units/tolerances.ts';
import { draftReader } from './draft-reader.ts';

/** One size of a drawer that is no longer the same, mm. */
export interface SizeChange {
  /** `bottom overhang`, `front width` */
  readonly what: string;
  readonly before: number;
  readonly after: number;
}

export interface DrawerChange {
  readonly rowId: string;
  readonly name: string;
  /** `lost`: it had a fit and has none, or the other way about. */
  readonly fit: 'changed' | 'lost' | 'gained';
  readonly sizes: readonly SizeChange[];
}

/** What an edit of the shop standard does to an order. */
export interface FitComparison {
  /** How many drawers were compared. */
  readonly drawers: number;
  readonly changed: readonly DrawerChange[];
  /** Findings that only the edited draft has, and how many only the earlier one had. */
  readonly begun: readonly Finding[];
  readonly ended: number;
}

const SIZES: readonly (readonly [what: string, of: (fit: DrawerFit) => number])[] = [
  ['bottom overhang', (fit) => fit.overhang.bottom],
  ['left overhang', (fit) => fit.overhang.left],
  ['right overhang', (fit) => fit.overhang.right],
  ['top overhang', (fit) => fit.overhang.top],
  ['front width', (fit) => fit.frontW],
  ['front height', (fit) => fit.frontH],
  ['box width', (fit) => fit.boxW],
  ['box height', (fit) => fit.boxH],
];

/** Compares two drafts of the same rows: which drawers change, each size before and after. */
export function compareFits(before: Draft, after: Draft): FitComparison {
  const [was, is] = [fitDraft(before), fitDraft(after)];
  const names = new Map([...was.fits, ...is.fits].map(([row, fit]) => [row, drawerName(fit.drawer)]));
  const changed = [...names].flatMap(([row, name]): readonly DrawerChange[] => {
    const rowId = after.rows[row - 1]?.id ?? before.rows[row - 1]?.id ?? '';
    const [old, next] = [was.fits.get(row), is.fits.get(row)];
    if (old === undefined || next === undefined) {
      return [{ rowId, name, fit: next === undefined ? 'lost' : 'gained', sizes: [] }];
    }
    const sizes = SIZES.flatMap(([what, of]) =>
      sameLength(of(old), of(next), SAME_LENGTH) ? [] : [{ what, before: of(old), after: of(next) }],
    );
    return sizes.length === 0 ? [] : [{ rowId, name, fit: 'changed', sizes }];
  });
  const key = ({ code, message }: Finding): string => `${code} ${message}`;
  const [had, has] = [new Set(was.findings.map(key)), new Set(is.findings.map(key))];
  return {
    drawers: names.size,
    changed,
    begun: is.findings.filter((finding) => !had.has(key(finding))),
    ended: [...had].filter((known) => !has.has(known)).length,
  };
}

/** The fits of a draft by the place of their rows, from 1, and all that is found on the way. */
export function fitDraft(draft: Draft): {
  readonly fits: ReadonlyMap<number, DrawerFit>;
  readonly findings: readonly Finding[];
} {
  const order = draftReader().read(draft);
  const fitted = fitOrder(order.value, draft.standard);
  return {
    fits: new Map(fitted.value.map((fit) => [fit.drawer.row, fit])),
    findings: [...order.findings, ...fitted.findings],
  };
}
