import { expect, test } from 'vitest';
import { frontSolid } from '../../core/scene/front-solid.ts';
import { woodsOf } from '../../core/fastening/woods.ts';
import { demoFits } from '../files/paper/fits.ts';

const [slab] = demoFits('harbor-library').fits;

test('frontSolid draws the edges of stiles and rails where their wood ends, whatever each is wide', () => {
  if (slab === undefined) throw new Error('no fits');
  for (const [memberWidth, railWidth] of [
    [50, 50],
    [60, 30],
    [30, 45],
  ] as const) {
    const front = { kind: 'five-piece', memberWidth, railWidth } as const;
    const fit = { ...slab, drawer: { ...slab.drawer, front } };
    const drawn = frontSolid(fit)
      .lines.filter(([from]) => from.z === 0)
      .flatMap((line) => line.map(({ x, y }) => `${x.toFixed(6)} ${y.toFixed(6)}`));
    const panel = woodsOf(fit)
      .filter(({ name }) => name.endsWith('rail'))
      .flatMap(({ edges }) => edges.map(({ from }) => from))
      .filter(({ y }) => y > railWidth - 1 && y < fit.frontH - railWidth + 1)
      .map(({ x, y }) => `${x.toFixed(6)} ${y.toFixed(6)}`);
    expect(panel).toHaveLength(4);
    for (const corner of panel) expect(drawn).toContain(corner);
  }
});
