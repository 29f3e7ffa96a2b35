import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import Papa from 'papaparse';
import type { Page, Response } from 'playwright-core';
import { expect, test } from 'vitest';
import { OUTPUT_KINDS } from '../../core/files/output-kinds.ts';
import type { Program } from './program.ts';

/** Nine fronts that lap by a little more or less each, so that jigs can be shared, and blocks paired by the solver. */
const CSV = [
  'cabinet,drawer,qty,style,opening_w,opening_h,left,right,bottom',
  ...Array.from({ length: 9 }, (_, row) => {
    const [side, low] = [30 + ((row * 5) % 8) / 4, 12 + ((row * 7) % 9) / 4];
    return `B${row + 1},only,1,full overlay,${14 + row},${5 + (row % 3)},lap ${side} mm,lap ${side} mm,lap ${low} mm`;
  }),
  '',
].join('\n');

/** Jigs of `schedule.csv` that set an overhang, and its rows that leave something to adjust. */
function scheduled(text: string): { readonly jigs: number; readonly off: readonly Record<string, string>[] } {
  const { data } = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true });
  const setting = data.filter(({ overhang_mm }) => overhang_mm !== '');
  return {
    jigs: new Set(setting.map(({ jig }) => jig)).size,
    off: setting.filter(({ adjust_mm }) => adjust_mm !== '0'),
  };
}

/** The plan of jigs in the browser: the solver in its worker, the proof on the page, the same in the file. */
export function jigPlanJourney(program: () => Program): void {
  test('the fewest jigs are picked and proved on the page, and schedule.csv says the same', async () => {
    const page = await program().reopen();
    const solvers: Response[] = [];
    page.on('response', (response) => {
      if (/highs[^/]*\.wasm$/.test(response.url())) solvers.push(response);
    });
    const csv = join(program().folder, 'uneven.csv');
    writeFileSync(csv, CSV);
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Open…' }).click();
    await (await chooser).setFiles(csv);
    await expect.poll(() => page.getByRole('grid').getAttribute('aria-rowcount')).toMatch(/^1[01]$/);

    await page.getByRole('button', { name: 'Jig plan' }).first().click();
    const plan = page.getByRole('main', { name: 'Jig plan' });
    const listed = plan.locator('.jig-plan-jigs > li');
    await plan.getByRole('radio').first().waitFor();
    await expect.poll(() => solvers.map((response) => response.ok())).toEqual([true]);
    const [each, fewest] = [plan.getByRole('radio').last(), plan.getByRole('radio').first()];
    const countOf = async (radio: typeof each) =>
      Number.parseInt((await radio.getAttribute('aria-label')) ?? '', 10);
    const [most, least] = [await countOf(each), await countOf(fewest)];
    expect(await each.isChecked()).toBe(true);
    await expect.poll(() => listed.count()).toBe(most);
    expect(least).toBeLessThan(most / 2);

    await fewest.check();
    await expect.poll(() => listed.count()).toBe(least);
    const words = plan.getByRole('complementary');
    await expect.poll(() => words.textContent()).toContain('Proved: no plan of fewer jigs sets every drawer');
    await expect.poll(() => words.textContent()).toMatch(/The plan leaves .+ in all to adjust/);

    const exported = scheduled(await scheduleOf(page, join(program().folder, 'uneven.zip')));
    expect(exported.jigs).toBe(least);
    expect(exported.off.length).toBeGreaterThan(0);
    for (const { edge, adjust_mm, adjust } of exported.off) {
      const [towards, away] =
        edge === 'bottom' ? ['down', 'up'] : edge === 'left' ? ['left', 'right'] : ['right', 'left'];
      expect(adjust).toMatch(new RegExp(`${Number(adjust_mm) > 0 ? towards : away}$`));
    }
    await page.close();
  });
}

/** The text of `schedule.csv`, written from the page as the only file. */
async function scheduleOf(page: Page, zip: string): Promise<string> {
  await page.getByRole('button', { name: 'Files out' }).first().click();
  const main = page.getByRole('main');
  for (const { label } of OUTPUT_KINDS) {
    const box = main.getByRole('checkbox', { name: new RegExp(`^${label.replace('.', '\\.')} `) });
    await box.setChecked(label === 'schedule.csv');
  }
  const download = page.waitForEvent('download');
  await main
    .getByRole('button', { name: /write|start/i })
    .first()
    .click();
  await (await download).saveAs(zip);
  const files = Object.entries(unzipSync(readFileSync(zip)));
  const [, bytes] = files.find(([name]) => name.endsWith('schedule.csv')) ?? [];
  if (bytes === undefined)
    throw new Error(`schedule.csv is not among ${files.map(([name]) => name).join(', ')}`);
  return new TextDecoder().decode(bytes);
}
