import { parseStandard } from '../../core/rules/parse-standard.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { STANDARDS } from '../../shared/library.ts';

/** The shop standards that come with the program. */
export const shippedStandards = (): readonly ShopStandard[] =>
  Object.entries(STANDARDS).flatMap(([name, json]) => parseStandard(json, name).value ?? []);
