import { bundleOrder } from '../../core/bundle.ts';
import type { ListedFile } from '../../core/files/manifest.ts';
import { manifest } from '../../core/files/manifest.ts';
import { partPaths } from '../../core/files/part-paths.ts';
import type { Finding } from '../../core/findings/finding.ts';
import { hasErrors } from '../../core/findings/make.ts';
import { settingsText } from '../../core/jigs/settings-text.ts';
import { designOrder, type Design, type Workshop } from '../../core/pipeline.ts';
import { STROKE_FONT } from '../../shared/library.ts';
import { freshFolder } from '../files/fresh-folder.ts';
import { codeOf, reasonOf, Refusal } from '../files/refusal.ts';
import type { Call } from './arguments.ts';
import { cautionText } from './help.ts';
import { loadMachine, loadOrder } from './load.ts';
import { BadCall, EXIT, type ExitCode, type Output } from './output.ts';
import { counted, findingCounts, findingLines } from './print-findings.ts';
import { progress } from './progress.ts';

/** `overhang make`: an order in, a folder of cut files and tables out. */
export async function make(call: Call, output: Output): Promise<ExitCode> {
  const loaded = await loadOrder(call);
  const own = call.machine === undefined ? loaded.value?.machine : undefined;
  const machine = own === undefined ? await loadMachine(call.machine) : { value: own, findings: [] };
  const findings: Finding[] = [...machine.findings, ...loaded.findings];
  if (machine.value === null || loaded.value === null || hasErrors(findings)) {
    return refuse(call, findings, output);
  }
  const workshop: Workshop = {
    standard: loaded.value.standard,
    machine: machine.value,
    registration: call.registration ?? loaded.value.registration ?? 'edge',
    font: STROKE_FONT,
  };
  const design = designOrder(loaded.value.order, workshop);
  findings.push(...design.findings);
  if (hasErrors(findings)) return refuse(call, findings, output);

  const folder = await freshFolder(call.out).catch(badOut);
  try {
    const files: ListedFile[] = [];
    const show = progress(output);
    for (const step of bundleOrder(design.value, findings, workshop)) {
      findings.push(...step.findings);
      for (const file of step.files) files.push(await folder.write(file));
      show(step.done, step.of);
    }
    if (hasErrors(findings)) {
      await folder.discard();
      return refuse(call, findings, output);
    }
    const { order, plan, parts } = design.value;
    const listed = files.toSorted((a, b) => (a.path < b.path ? -1 : 1));
    await folder.write({
      path: 'manifest.json',
      text: manifest({
        order,
        standard: workshop.standard,
        machine: workshop.machine,
        plan,
        parts,
        files: listed,
        pathsOf: partPaths(workshop.machine.dxf.unit),
      }),
    });
    await folder.finish();
    for (const line of findingLines(findings, call.order)) output.err(`${line}\n`);
    output.out(summary(call, design.value, workshop, listed.length + 1, findings));
    return EXIT.ok;
  } catch (problem) {
    await folder.discard();
    return badOut(problem);
  }
}

/** A folder that may not or cannot be written is a bad `--out`. */
function badOut(problem: unknown): never {
  if (problem instanceof Refusal) throw new BadCall(`--out ${problem.message}`);
  if (codeOf(problem) === '') throw problem;
  throw new BadCall(`--out cannot be written: ${reasonOf(problem)}; name another folder`);
}

function refuse(call: Call, findings: readonly Finding[], output: Output): ExitCode {
  for (const line of findingLines(findings, call.order)) output.err(`${line}\n`);
  output.err(`${findingCounts(findings)}; nothing was written\n`);
  return EXIT.faults;
}

function summary(
  call: Call,
  { order, fits, plan, parts }: Design,
  { standard, machine }: Workshop,
  files: number,
  findings: readonly Finding[],
): string {
  const drawers = fits.reduce((sum, { drawer }) => sum + drawer.qty, 0);
  const pieces = parts.reduce((sum, { copies }) => sum + copies, 0);
  const jigs = plan.jigs.map((jig) => {
    const served = new Set(plan.uses.filter((use) => use.jig === jig).map(({ fit }) => fit));
    const number = [...served].reduce((sum, { drawer }) => sum + drawer.qty, 0);
    return `  ${jig.id.padEnd(5)}${jig.kind.padEnd(14)}${settingsText(jig, order.unit).padEnd(46)} ${counted(number, 'drawer')}`;
  });
  return [
    `${order.name}: ${counted(drawers, 'drawer')} on ${counted(fits.length, 'line')}, ${standard.name}`,
    `${counted(plan.jigs.length, 'jig')}, ${counted(parts.length, 'part')} (${counted(pieces, 'piece')}) of ${machine.sheet.material} ${machine.sheet.thickness} mm, ${machine.name}`,
    ...jigs,
    findingCounts(findings),
    ...(order.date === undefined ? ['no date is engraved: give one with --date YYYY-MM-DD'] : []),
    `${files} files in ${call.out}; begin with read-first.txt`,
    '',
    cautionText(),
  ].join('\n');
}
