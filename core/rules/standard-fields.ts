import { z } from 'zod';
import { parseEdgeCondition } from '../order/edge-condition.ts';
import { quoteText } from '../order/quote-text.ts';
import type { LengthUnit } from '../order/types.ts';
import { parseLength, type LengthOptions } from '../units/parse-length.ts';

/** An object that takes its own fields and no others, and names them when it gets another. */
export const strict = <Shape extends z.core.$ZodLooseShape>(shape: Shape) =>
  z.strictObject(shape, {
    error: (issue) =>
      issue.code === 'unrecognized_keys'
        ? `unknown ${issue.keys.map(quoteText).join(', ')}; the fields here are ${Object.keys(shape).join(', ')}`
        : undefined,
  });

/** Text with something in it. */
export const words = z.string().refine((text) => text.trim() !== '', 'it is empty; write a text');

/** A value with its source, which nobody may leave out. */
export const sourced = <Value extends z.ZodType>(value: Value) =>
  strict({
    value,
    source: z
      .string()
      .refine(
        (text) => text.trim() !== '',
        'it is empty; name a document, or write common practice, no source',
      ),
  });

/** A length as text, decoded to mm. */
export const lengthText = (unit: LengthUnit, options: Omit<LengthOptions, 'unit'> = {}) =>
  z.string().transform((text, context) => {
    const length = parseLength(text, { unit, ...options });
    if (length.ok) return length.mm;
    context.addIssue({ code: 'custom', message: `${quoteText(text)} is refused: ${length.reason}` });
    return z.NEVER;
  });

/** An edge condition as text, decoded. */
export const conditionText = (unit: LengthUnit) =>
  z.string().transform((text, context) => {
    const edge = parseEdgeCondition(text, { unit });
    if (edge.ok) return edge.condition;
    context.addIssue({ code: 'custom', message: `${quoteText(text)} is refused: ${edge.reason}` });
    return z.NEVER;
  });

/** Degrees. A back bevel beyond it leaves a knife's edge at the face; common practice, no source. */
export const STEEPEST_BEVEL = 30;

/** A bevel as text such as `3 deg`, decoded to degrees. */
export const bevelText = z.string().transform((text, context) => {
  const [, number] = /^\s*(\d+(?:[.,]\d+)?)\s*(?:deg|degrees?|°)?\s*$/i.exec(text) ?? [];
  const degrees = Number((number ?? 'none').replace(',', '.'));
  if (degrees <= STEEPEST_BEVEL) return degrees;
  context.addIssue({
    code: 'custom',
    message: `${quoteText(text)} is refused: write an angle from 0 deg to ${STEEPEST_BEVEL} deg`,
  });
  return z.NEVER;
});
