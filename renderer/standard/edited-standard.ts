import type { Finding } from '../../core/findings/finding.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { writeStandard } from '../../core/rules/write-standard.ts';
import { restateStandard } from '../document/restate.ts';
import type { Json } from '../document/json.ts';

/** A shop standard in work: its document in the unit that is shown, and the unit that is the shop's own. */
export interface EditedStandard {
  readonly document: Json;
  readonly shown: LengthUnit;
  readonly shopUnit: LengthUnit;
}

/** A standard as its document, in words of the unit that is shown. */
export const editStandard = (standard: ShopStandard, shown: LengthUnit): EditedStandard => ({
  document: JSON.parse(writeStandard({ ...standard, unit: shown })),
  shown,
  shopUnit: standard.unit,
});

/** The same work in words of another unit. */
export const showIn = (edited: EditedStandard, shown: LengthUnit): EditedStandard =>
  edited.shown === shown
    ? edited
    : { ...edited, shown, document: restateStandard(edited.document, edited.shown, shown) };

/** What the document says, sums worked out, or what is wrong with it. */
export function readEdited({ document, shown, shopUnit }: EditedStandard): {
  readonly value: ShopStandard | null;
  readonly findings: readonly Finding[];
} {
  const { value, findings } = parseStandard(restateStandard(document, shown, shown), 'shop standard');
  return { value: value === null ? null : { ...value, unit: shopUnit }, findings };
}
