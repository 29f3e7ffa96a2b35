import { isRecord } from '../../collections/is-record.ts';
import type { LengthUnit } from '../../order/types.ts';
import { parseLength } from '../../units/parse-length.ts';
import { SIDE_MOUNT_ADJUSTERS, UNDERMOUNT_ADJUSTERS } from './added-adjusters.ts';
import { addedBox } from './added-box.ts';
import { addedFastening } from './added-fastening.ts';
import { addedFront } from './added-front.ts';
import { addedPulls } from './added-pulls.ts';
import { ADDED_SPECIES } from './added-species.ts';

/**
 * A version 1 document of a shop standard as one of version 2: what version 1 did not say gets the values that
 * the standards of the program have. What is wrong with the document stays, for the schema to tell.
 */
export function standardFrom1(json: unknown, unit: LengthUnit): unknown {
  if (!isRecord(json)) return json;
  const document: Fields = {
    species: ADDED_SPECIES,
    fastening: addedFastening(unit),
    pulls: addedPulls(unit),
    ...json,
    version: 2,
    slides: eachOf(json['slides'], (slide) => withAdded(slide, { adjusters: adjustersOf(slide, unit) })),
    front: withAdded(json['front'], addedFront(unit)),
    box: withAdded(json['box'], addedBox(unit)),
  };
  return Object.fromEntries(Object.entries(document).filter(([, value]) => value !== undefined));
}

type Fields = Readonly<Record<string, unknown>>;

const withAdded = (value: unknown, fields: Fields): unknown =>
  isRecord(value) ? { ...fields, ...value } : value;

const eachOf = (value: unknown, change: (item: unknown) => unknown): unknown =>
  isRecord(value)
    ? Object.fromEntries(Object.entries(value).map(([name, item]) => [name, change(item)]))
    : value;

/** Slides without a member on the box side are under the box. */
function adjustersOf(slide: unknown, unit: LengthUnit): Fields {
  const member = isRecord(slide) ? slide['sideMember'] : undefined;
  const text = isRecord(member) ? member['value'] : undefined;
  const height = parseLength(typeof text === 'string' ? text : '0', { unit, zero: true });
  return height.ok && height.mm > 0 ? SIDE_MOUNT_ADJUSTERS : UNDERMOUNT_ADJUSTERS;
}
