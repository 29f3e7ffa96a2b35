import type { Fuzzed } from './fuzzed.ts';
import { DOCUMENT_PARSERS } from './parsers/documents.ts';
import { GRAMMARS } from './parsers/grammars.ts';
import { KEPT_FILE_PARSERS } from './parsers/kept-files.ts';
import { ORDER_PARSERS } from './parsers/orders.ts';
import { MESSAGE_PARSERS } from './parsers/messages.ts';
import { PLATFORM_PARSERS } from './parsers/platform.ts';
import { READING_PARSERS } from './parsers/readings.ts';

/** Everything that reads what the program did not write itself, a moment ago. */
export const PARSERS: readonly Fuzzed[] = [
  ...GRAMMARS,
  ...ORDER_PARSERS,
  ...DOCUMENT_PARSERS,
  ...READING_PARSERS,
  ...PLATFORM_PARSERS,
  ...MESSAGE_PARSERS,
  ...KEPT_FILE_PARSERS,
];
