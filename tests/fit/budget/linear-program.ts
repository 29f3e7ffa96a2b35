import highsLoader from 'highs';
import type { BudgetModel } from '../../../core/fit/budget/model.ts';

const highs = await highsLoader();

/**
 * The most slack that any setting of the adjusters leaves all gaps, given the errors, by the linear-program
 * solver HiGHS: an outside judge of the closed form. mm.
 */
export function bestSlack({ places, side, height }: BudgetModel, errors: readonly number[]): number {
  const rows: string[] = [];
  const number = (value: number) => (value < 0 ? `- ${(-value).toFixed(15)}` : `+ ${value.toFixed(15)}`);
  for (const { hung, byError, by, limits } of places) {
    if (limits === null) continue;
    const gap = hung + byError.reduce((sum, growth, index) => sum + growth * (errors[index] ?? 0), 0);
    const move = `${number(by.side)} s ${number(by.heightLeft)} l ${number(by.heightRight)} r`;
    rows.push(`${move} - t >= ${(limits.least - gap).toFixed(15)}`);
    rows.push(`${move} + t <= ${(limits.most - gap).toFixed(15)}`);
  }
  const between = (name: string, { least, most }: { least: number; most: number }) =>
    `${least.toFixed(15)} <= ${name} <= ${most.toFixed(15)}`;
  const program = [
    'Maximize',
    'obj: t',
    'Subject To',
    ...rows.map((row, index) => `c${index}: ${row}`),
    'Bounds',
    't free',
    between('s', side),
    between('l', height),
    between('r', height),
    'End',
  ].join('\n');
  const solution = highs.solve(program);
  if (solution.Status !== 'Optimal') throw new Error(`HiGHS: ${solution.Status}\n${program}`);
  return solution.ObjectiveValue;
}
