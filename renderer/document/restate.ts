import { parseEdgeCondition, writeEdgeCondition } from '../../core/order/edge-condition.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { sumLength } from '../../core/units/sum-length.ts';
import { writeLength } from '../../core/units/write-length.ts';
import { valueAt, withValue, type Json } from './json.ts';

/** A length, or a sum of lengths, in exact words of another unit; any other text stays as it is. */
export function restateLength(text: string, from: LengthUnit, to: LengthUnit): string {
  const length = sumLength(text, { unit: from, sign: 'any' });
  return length.ok ? writeLength(length.mm, to) : text;
}

function restateText(text: string, from: LengthUnit, to: LengthUnit): string {
  const edge = parseEdgeCondition(text, { unit: from });
  return edge.ok ? writeEdgeCondition(edge.condition, to) : restateLength(text, from, to);
}

/**
 * The document of a shop standard in words of another unit: each value that can be read is written anew,
 * exactly; what is not right yet stays as it was typed.
 */
export function restateStandard(document: Json, from: LengthUnit, to: LengthUnit): Json {
  const change = (value: Json, key: string): Json => {
    if (typeof value === 'string') return key === 'value' ? restateText(value, from, to) : value;
    if (typeof value !== 'object' || value === null) return value;
    if (Array.isArray(value)) return value.map((item: Json) => change(item, ''));
    return Object.fromEntries(
      Object.entries(value).map(([name, item]) => [name, isNoLength(name, item) ? item : change(item, name)]),
    );
  };
  return withValue(change(document, ''), ['unit'], to);
}

/** Values that are no lengths, not even where they are bare numbers. */
const NO_LENGTHS: ReadonlySet<string> = new Set([
  'backBevel',
  'specificGravity',
  'radial',
  'tangential',
  'humidity',
  'temperature',
  'largestAngle',
  'angleStep',
  'pull',
  'safety',
  'boreLength',
]);

/** A slide or pull may have the name of one of them, but is no value. */
const isNoLength = (name: string, item: Json): boolean =>
  NO_LENGTHS.has(name) && typeof valueAt(item, ['value']) === 'string';
