import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { paperMaker } from '../../core/bundle-paper.ts';
import { fastenOrder } from '../../core/fastening/fasten-order.ts';
import { exportPart } from '../../core/files/export-part.ts';
import { USUAL } from '../../core/files/output-choice.ts';
import { budgetOrder } from '../../core/fit/budget/budget-order.ts';
import { fitOrder } from '../../core/fit/fit-order.ts';
import { seasonDrawer } from '../../core/fit/seasons/season-drawer.ts';
import { planOrder } from '../../core/jigs/plan-order.ts';
import { engravedWords } from '../../core/order/engraved-words.ts';
import { partsOf } from '../../core/parts/parts-of.ts';
import type { Draft } from '../../core/project/draft.ts';
import { draftReader } from '../../core/session/draft-reader.ts';
import { loadPaperFonts } from '../../shared/load-paper-fonts.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';

/** Milliseconds of each stage of the chain, from the cells of an order to bytes on a disk. */
export type StageTimes = ReadonlyMap<string, number>;

export interface ChainRun {
  readonly times: StageTimes;
  readonly jigs: number;
  readonly parts: number;
  readonly files: number;
  readonly bytes: number;
}

/** Runs the whole chain on a draft once, nothing being kept from an earlier run, and times its stages. */
export async function runChain(draft: Draft): Promise<ChainRun> {
  const times = new Map<string, number>();
  const timed = async <T>(stage: string, run: () => T | Promise<T>): Promise<T> => {
    const begin = performance.now();
    const result = await run();
    times.set(stage, (times.get(stage) ?? 0) + performance.now() - begin);
    return result;
  };
  const { standard, machine, registration } = draft;
  const order = (await timed('order', () => draftReader().read(draft))).value;
  const context = { machine, unit: order.unit, order: engravedWords(order) };
  const fits = (await timed('fit', () => fitOrder(order, standard))).value;
  await timed('gaps', () => {
    budgetOrder(fits, standard, { samples: 0, seed: 0 });
    for (const fit of fits) seasonDrawer(fit, standard);
  });
  const fastenings = (await timed('fastening', () => fastenOrder(fits, standard))).value;
  const plan = (await timed('jigs', () => planOrder({ fits, fastenings, registration, standard }, context)))
    .value;
  const parts = (await timed('parts', () => partsOf(plan.jigs, machine, STROKE_FONT))).value;
  const texts = await timed('cut files', () =>
    parts.flatMap((part) => {
      const { value } = exportPart(part, machine);
      return value === null ? [] : [value.dxf, value.svg];
    }),
  );
  const fonts = await loadPaperFonts();
  const papers = await timed('paper', async () => {
    const print = paperMaker(
      { order, fits, fastenings, plan, parts },
      { standard, machine },
      USUAL.paper,
      fonts,
    );
    const made = [await print('templates'), await print('instructions'), await print('checklist')];
    return made.flatMap(({ value }) => value.map(({ content }) => content));
  });
  const contents = [...texts, ...papers];
  const folder = mkdtempSync(join(tmpdir(), 'overhang-bench-'));
  await timed('writing bytes', () => {
    for (const [index, content] of contents.entries()) writeFileSync(join(folder, `${index}`), content);
  });
  rmSync(folder, { recursive: true });
  return {
    times,
    jigs: plan.jigs.length,
    parts: parts.length,
    files: contents.length,
    bytes: contents.reduce((sum, content) => sum + Buffer.byteLength(content), 0),
  };
}

/** ms of all stages. */
export const totalOf = (times: StageTimes): number => [...times.values()].reduce((sum, ms) => sum + ms, 0);
