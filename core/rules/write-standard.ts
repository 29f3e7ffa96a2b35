import { z } from 'zod';
import { STANDARD_FORMAT, STANDARD_SCHEMAS, STANDARD_VERSION } from './standard-schema.ts';
import type { ShopStandard } from './types.ts';

/** Writes a shop standard as JSON text that `parseStandard` reads back the same, ending in a line break. */
export const writeStandard = (standard: ShopStandard): string =>
  `${JSON.stringify(standardDocument(standard), undefined, 2)}\n`;

/** A shop standard as the JSON document that `parseStandard` reads. */
export const standardDocument = (standard: ShopStandard): object =>
  z.encode(STANDARD_SCHEMAS[standard.unit], {
    format: STANDARD_FORMAT,
    version: STANDARD_VERSION,
    ...standard,
  });
