import type { ShopStandard, SlideAdjusters } from '../../rules/types.ts';
import type { DrawerFit } from '../types.ts';
import type { Span } from './types.ts';

/** The adjusters of the slide that a drawer hangs on. */
export function adjustersOf(fit: DrawerFit, standard: ShopStandard): SlideAdjusters {
  const { slideName } = fit.rules;
  const slide = Object.hasOwn(standard.slides, slideName) ? standard.slides[slideName] : undefined;
  if (slide === undefined) throw new RangeError(`adjustersOf: the standard has no slide ${slideName}`);
  return slide.adjusters;
}

/** An adjuster's signed range in mm. */
export const rangeOf = (adjusters: SlideAdjusters, name: keyof SlideAdjusters): Span => ({
  least: adjusters[name].least.value,
  most: adjusters[name].most.value,
});
