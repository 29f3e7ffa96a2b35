import type { Tolerance } from '../../rules/types.ts';
import type { Random } from '../../units/random.ts';

/**
 * One error as a share of its tolerance. Each takes two random numbers, so that a change of one tolerance
 * leaves the luck of all others as it was. A normal error has a third of its tolerance as its standard
 * deviation (Box and Muller 1958) and passes it once in 370.
 */
export function drawError(distribution: Tolerance['distribution'], random: Random): number {
  const [u, v] = [random(), random()];
  switch (distribution) {
    case 'normal':
      return (Math.sqrt(-2 * Math.log(1 - u)) * Math.cos(2 * Math.PI * v)) / 3;
    case 'uniform':
      return 2 * u - 1;
    default:
      return u + v - 1;
  }
}
