import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';

const AXE = readFileSync(new URL('../../node_modules/axe-core/axe.min.js', import.meta.url), 'utf8');

/** What axe finds wrong with the page: rule and place. */
export async function axeFindings(page: Page): Promise<readonly string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const axe: {
      run: (
        context: unknown,
        options: { readonly resultTypes: readonly string[] },
      ) => Promise<{
        violations: { id: string; nodes: { target: unknown; failureSummary?: string }[] }[];
      }>;
    } = Reflect.get(globalThis, 'axe');
    const { violations } = await axe.run(Reflect.get(globalThis, 'document'), {
      resultTypes: ['violations'],
    });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id}: ${String(target)} ${failureSummary ?? ''}`),
    );
  });
}
