import { bench, describe } from 'vitest';
import { fastenDrawer } from '../../core/fastening/fasten-drawer.ts';
import { fitWith, INCH, STANDARD, standardWith, mm } from './fits.ts';

const front = { kind: 'five-piece', memberWidth: 2.25 * INCH } as const;

describe('fastenDrawer', () => {
  bench('a slab, straight screws', () => void fastenDrawer(fitWith(), STANDARD));
  bench('a five-piece front, leaning screws', () =>
    void fastenDrawer(fitWith({ boxW: 260, drawer: { front } }), STANDARD));
  bench('a five-piece front on which no screw fits, with its cures', () =>
    void fastenDrawer(fitWith({ boxW: 260, drawer: { front } }), standardWith({ largestAngle: mm(20) })));
});
