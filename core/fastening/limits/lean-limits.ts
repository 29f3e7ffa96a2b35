import { leanLimit } from './make.ts';
import type { PlaceContext } from './place-context.ts';
import type { LeanLimit } from './types.ts';

/** From the lowest point of the disc at the screw's tip to a level so far below the back of the front, mm. */
export const coverHeight = (
  { screw, walls }: Pick<PlaceContext, 'screw' | 'walls'>,
  level: number,
): Pick<LeanLimit, 'base' | 'cosine' | 'sine'> => ({
  base: walls.front + level,
  cosine: -screw.length.value,
  sine: -screw.diameter.value / 2,
});

/** The thickness that the cover counts from: less where the face is profiled. */
const solidThickness = ({ fit }: Pick<PlaceContext, 'fit'>): number =>
  Math.min(fit.frontThickness, fit.drawer.front.thinnest ?? Infinity);

/** The limits that depend on the angle alone: cover, bite, the driver at the box's back, the guide's bore. */
export function leanLimits(context: Omit<PlaceContext, 'frame' | 'spec'>): readonly LeanLimit[] {
  const { fit, screw, walls, standard, guideThickness, bit } = context;
  const { cover, bite, driver, driverRoom, guide } = standard.fastening;
  const profiled = solidThickness({ fit }) < fit.frontThickness;
  const ends = driver.map(({ name, radius }, index) => ({
    name,
    radius: radius.value,
    end: driver.slice(0, index + 1).reduce((sum, part) => sum + part.length.value, 0),
  }));
  return [
    leanLimit({
      limit: 'cover',
      against: profiled ? 'the face, where its profile is deepest' : 'the face of the front',
      least: cover.value,
      ...coverHeight(context, solidThickness({ fit })),
    }),
    leanLimit({
      limit: 'bite',
      against: 'the length in the front',
      least: bite.value,
      base: screw.length.value,
      secant: -walls.front,
    }),
    leanLimit({
      // The bore is round and whole for its length less what its slanted ends cut off.
      limit: 'guide bore',
      against: 'the length of bore that guides the drill',
      least: guide.boreLength.value * bit,
      secant: guideThickness,
      tangent: -(bit + guide.boreFit.value),
    }),
    ...ends.map(({ name, radius, end }) =>
      leanLimit({
        limit: 'driver to box back',
        against: `the ${name} to the box's back`,
        least: driverRoom.value,
        base: walls.back - walls.front,
        cosine: -end,
        sine: -radius,
      }),
    ),
  ];
}
