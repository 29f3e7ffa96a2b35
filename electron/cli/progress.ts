import type { Output } from './output.ts';

/** Fewer parts are written before anyone wonders. */
const WORTH_TELLING = 60;

/** Tells every tenth of a long order's parts. */
export function progress({ err }: Output): (done: number, of: number) => void {
  let told = 0;
  return (done, of) => {
    const tenth = Math.floor((10 * done) / of);
    if (of < WORTH_TELLING || tenth <= told) return;
    told = tenth;
    err(`${done} of ${of} parts written\n`);
  };
}
