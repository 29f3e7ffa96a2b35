import * as fc from 'fast-check';
import { resolve } from 'node:path';
import { isFileName, safeName } from '../../../core/files/file-name.ts';
import { readArguments } from '../../../electron/cli/arguments.ts';
import { BadCall } from '../../../electron/cli/output.ts';
import { Refusal } from '../../../electron/files/refusal.ts';
import { readPort } from '../../../electron/host/host-arguments.ts';
import { documentArguments } from '../../../electron/main/document-arguments.ts';
import { checkOutputPath } from '../../../electron/messages/output-path.ts';
import { locatePage } from '../../../electron/pages/locate-page.ts';
import { decodeText } from '../../../shared/decode-text.ts';
import { isDocumentName } from '../../../shared/document-kinds.ts';
import { anyText, textOf } from '../arbitraries.ts';
import { fuzzed, type Fuzzed } from '../fuzzed.ts';
import { PATHS } from './host-paths.ts';

const WORDS = [
  'make',
  'check',
  'help',
  'a.csv',
  'b.overhang',
  '--out',
  '--out=x',
  '--zip',
  '--again',
  '--units',
  'mm',
  'in',
  '--jigs',
  'edge',
  '--jigs-share',
  'fewest',
  '3',
  '0',
  '--only-jigs',
  'S1,S2',
  '--formats',
  'dxf,svg',
  'none',
  '--paper',
  '--paper-size',
  'A3',
  'roll',
  '--printer-factors',
  '1.002,0.998',
  '--extras',
  '--date',
  '2031-05-20',
  '--name',
  '--jobs',
  '--summary',
  '--lists',
  '--',
  '-h',
  '--no-zip',
  '--standard',
  '--machine',
  'router',
];

const isBadCall = (problem: unknown): boolean =>
  problem instanceof BadCall && !/undefined|\[object/.test(problem.message);

export const PLATFORM_PARSERS: readonly Fuzzed[] = [
  fuzzed('command line', {
    inputs: fc.oneof(
      {
        weight: 4,
        arbitrary: fc.array(
          fc.oneof({ weight: 9, arbitrary: fc.constantFrom(...WORDS) }, { weight: 1, arbitrary: anyText }),
          { maxLength: 12 },
        ),
      },
      {
        weight: 1,
        arbitrary: fc
          .array(fc.oneof(fc.constantFrom(...WORDS), anyText), { maxLength: 6 })
          .map((more) => ['make', 'a.csv', '--out', 'x', ...more]),
      },
    ),
    ofText: (text) => text.split(' '),
    weight: 4,
    mayThrow: isBadCall,
    check(words) {
      const call = readArguments(words);
      if (call.command !== 'make' && call.command !== 'check') return [];
      return [
        ...(call.orders.length > 0 ? [] : ['no order']),
        ...(call.command === 'make' && call.out === '' ? ['nowhere to write'] : []),
        ...(typeof call.sharing === 'number' && call.sharing < 1 ? ['less than one jig'] : []),
      ];
    },
  }),
  fuzzed('port of the host', {
    inputs: fc.array(fc.oneof(fc.constantFrom('--port', '--port=0', '0', '8080', '65536', '-1'), anyText), {
      maxLength: 4,
    }),
    ofText: (text) => ['--port', text],
    weight: 2,
    // Those of the language's own reader of options are TypeErrors.
    mayThrow: (problem) => problem instanceof RangeError || problem instanceof TypeError,
    check: (words) => (readPort(words) <= 65_535 ? [] : ['no port']),
  }),
  fuzzed('words that the desktop is started with', {
    inputs: fc.array(
      fc.oneof(textOf(['file://', '/a', '.csv', '.overhang', '%00', '%2f', 'C:\\', '-', '..']), anyText),
      { maxLength: 4 },
    ),
    ofText: (text) => ['program', text],
    weight: 2,
    check: (argv) =>
      documentArguments(argv, '/home').flatMap((path) =>
        isDocumentName(path) && path.startsWith('/') ? [] : [path],
      ),
  }),
  fuzzed('path of the page', {
    inputs: textOf(PATHS),
    ofText: (text) => text,
    weight: 4,
    check(path) {
      const found = locatePage('/dist', path);
      return found === null ||
        /^\/dist\/(?:[A-Za-z0-9_-][A-Za-z0-9._-]*\/)*[A-Za-z0-9_-][A-Za-z0-9._-]*$/.test(found)
        ? []
        : [`led to ${found}`];
    },
  }),
  fuzzed('path of a cut file', {
    inputs: textOf(['dxf', '/', '..', '.', 'a.dxf', 'con', 'nul.txt', '\\', ':', '~', ' ']),
    ofText: (text) => text,
    weight: 4,
    mayThrow: (problem) => problem instanceof Refusal,
    check(path) {
      if (!isFileName(safeName(path))) return [`the folder ${safeName(path)}`];
      checkOutputPath(path);
      return resolve('/out', path).startsWith('/out/') && !/[\\:]|(^|\/)\.\.?(\/|$)/.test(path)
        ? []
        : [`led out: ${path}`];
    },
  }),
  fuzzed<Uint8Array>('bytes of a text file', {
    inputs: fc.oneof(
      fc.uint8Array({ maxLength: 60 }),
      anyText.map((text) => Buffer.from(text, 'utf8')),
      anyText.map((text) => Buffer.from(text, 'utf16le')),
    ),
    ofText: (text) => Buffer.from(text, 'utf8'),
    weight: 4,
    check(bytes) {
      const decoded = decodeText(bytes);
      if (!decoded.ok) return /^The file .*;.*\.$/s.test(decoded.reason) ? [] : [decoded.reason];
      const mark = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
      return Buffer.compare(Buffer.from(decoded.text, 'utf8'), bytes.subarray(mark)) === 0
        ? []
        : ['other bytes'];
    },
  }),
];
