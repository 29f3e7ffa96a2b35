import { compileLate } from './compile-late.ts';
import { run } from './run.ts';

/** The demo: an invented harbor library and its boathouse, made as a shop would. */
const CALLS: readonly (readonly string[])[] = [
  [
    'make',
    'assets/orders/harbor-library.csv',
    '--machine',
    'laser-6',
    '--date',
    '2026-12-01',
    '--out',
    'out/harbor-library',
    '--again',
  ],
  [
    'make',
    'assets/orders/boathouse-frameless.csv',
    '--standard',
    'frameless-undermount',
    '--units',
    'mm',
    '--machine',
    'router',
    '--jigs',
    'corner',
    '--date',
    '2026-12-01',
    '--out',
    'out/boathouse-frameless',
    '--again',
  ],
];

const output = {
  out: (text: string) => process.stdout.write(text),
  err: (text: string) => process.stderr.write(text),
};

compileLate();
for (const words of CALLS) {
  output.out(`$ overhang ${words.join(' ')}\n`);
  const code = await run(words, output);
  if (code !== 0) {
    process.exitCode = code;
    break;
  }
}
if (process.exitCode === undefined) {
  output.out('The folders are out/harbor-library and out/boathouse-frameless.\n');
  output.out('An order with deliberate faults: npm run -s overhang -- check assets/orders/faulty.csv\n');
}
