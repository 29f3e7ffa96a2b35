import type { PaperPage } from '../page/types.ts';
import type { Pdf } from './open-document.ts';

/**
 * Asks viewers to print without scaling, one-sided (ISO 32000-1:2008, table 150; Enforce is ISO 32000-2:2017,
 * table 147). Printers and viewers may still not comply, hence the bars on every page.
 */
export function printTrue(pdf: Pdf): void {
  Object.assign(inside(pdf, '_root', 'data', 'ViewerPreferences', 'data'), {
    PrintScaling: 'None',
    Enforce: ['PrintScaling'],
    Duplex: 'Simplex',
  });
}

/** Shows each page's own name in the place of its number. */
export function labelPages(pdf: Pdf, pages: readonly PaperPage[]): void {
  const labels = pages.flatMap(({ label }, index) => [index, { P: pdfString(label) }]);
  Object.assign(inside(pdf, '_root', 'data'), { PageLabels: { Nums: labels } });
}

/** pdfkit writes String objects as texts and plain strings as names. */
// oxlint-disable-next-line no-new-wrappers, unicorn/new-for-builtins
const pdfString = (text: string): object => new String(text);

/** A part of pdfkit's document that its types keep to themselves, by the names that lead to it. */
function inside(pdf: Pdf, ...names: readonly string[]): object {
  return names.reduce<object>((of, name) => {
    const part: unknown = Reflect.get(of, name);
    if (typeof part !== 'object' || part === null) throw new Error(`pdfkit's document has no ${name}`);
    return part;
  }, pdf);
}
