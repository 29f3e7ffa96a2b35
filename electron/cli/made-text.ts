import { includesJig, includesKind } from '../../core/files/output-choice.ts';
import type { Finding } from '../../core/findings/finding.ts';
import { settingsText } from '../../core/jigs/settings-text.ts';
import type { Design, Workshop } from '../../core/pipeline.ts';
import type { Call } from './arguments.ts';
import { counted, findingCounts } from './print-findings.ts';

/** What was made of one order: its jigs with what they set and for how many drawers. */
export function madeText(
  call: Call,
  { order, fits, plan, parts: all }: Design,
  { standard, machine }: Workshop,
  files: number,
  findings: readonly Finding[],
): string {
  const drawers = fits.reduce((sum, { drawer }) => sum + drawer.qty, 0);
  const parts = all.filter(({ jig }) => includesJig(call.choice, jig));
  const made = plan.jigs.filter(({ id }) => includesJig(call.choice, id));
  const pieces = parts.reduce((sum, { copies }) => sum + copies, 0);
  const wide = Math.max(0, ...made.map(({ kind }) => kind.length)) + 2;
  const jigs = made.map((jig) => {
    const served = new Set(
      [...plan.uses, ...plan.aids].filter((use) => use.jig === jig).map(({ fit }) => fit),
    );
    const number = [...served].reduce((sum, { drawer }) => sum + drawer.qty, 0);
    return `  ${jig.id.padEnd(5)}${jig.kind.padEnd(wide)}${settingsText(jig, order.unit).padEnd(46)} ${counted(number, 'drawer')}`;
  });
  return [
    `${order.name}: ${counted(drawers, 'drawer')} on ${counted(fits.length, 'line')}, ${standard.name}`,
    `${counted(made.length, 'jig')}${made.length < plan.jigs.length ? ` of ${plan.jigs.length}` : ''}, ${counted(parts.length, 'part')} (${counted(pieces, 'piece')}) of ${machine.sheet.material} ${machine.sheet.thickness} mm, ${machine.name}`,
    ...jigs,
    findingCounts(findings),
    ...(order.date === undefined ? ['no date is engraved: give one with --date YYYY-MM-DD'] : []),
    `${counted(files, 'file')} in ${call.out}${includesKind(call.choice, 'read-first') ? '; begin with read-first.txt' : ''}`,
    '',
  ].join('\n');
}
