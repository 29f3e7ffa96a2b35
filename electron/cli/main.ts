import { codeOf } from '../files/refusal.ts';
import { compileLate } from './compile-late.ts';
import { run } from './run.ts';

// Whoever read along may stop, as `head` does; the work goes on without telling.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (problem) => {
    if (codeOf(problem) !== 'EPIPE') throw problem;
  });
}

compileLate();
process.exitCode = await run(process.argv.slice(2), {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
});
