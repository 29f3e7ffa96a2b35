import { z } from 'zod';
import { parseEdgeCondition, writeEdgeCondition } from '../order/edge-condition.ts';
import { unknownKeys } from '../order/field-findings.ts';
import { quoteText } from '../order/quote-text.ts';
import type { EdgeCondition, LengthUnit } from '../order/types.ts';
import { parseLength, type LengthOptions } from '../units/parse-length.ts';
import { writeLength } from '../units/write-length.ts';

/** An object that takes its own fields and no others, and names them when it gets another. */
export const strict = <Shape extends z.core.$ZodLooseShape>(shape: Shape) =>
  z.strictObject(shape, {
    error: (issue) =>
      issue.code === 'unrecognized_keys'
        ? `unknown ${unknownKeys(issue.keys)}; the fields here are ${Object.keys(shape).join(', ')}`
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

/** A length as text, decoded to mm; written exactly, in `unit` where it can be. */
export const lengthText = (unit: LengthUnit, options: Omit<LengthOptions, 'unit'> = {}) =>
  z.codec(z.string(), z.number(), {
    decode(text, context) {
      const length = parseLength(text, { unit, ...options });
      if (length.ok) return length.mm;
      const message = `${quoteText(text)} is refused: ${length.reason}`;
      context.issues.push({ code: 'custom', input: text, message });
      return z.NEVER;
    },
    encode: (mm) => writeLength(mm, unit),
  });

/** An edge condition as text, decoded. */
export const conditionText = (unit: LengthUnit) =>
  z.codec(z.string(), z.custom<EdgeCondition>(), {
    decode(text, context) {
      const edge = parseEdgeCondition(text, { unit });
      if (edge.ok) return edge.condition;
      context.issues.push({
        code: 'custom',
        input: text,
        message: `${quoteText(text)} is refused: ${edge.reason}`,
      });
      return z.NEVER;
    },
    encode: (condition) => writeEdgeCondition(condition, unit),
  });
