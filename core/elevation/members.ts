import { memberAt } from '../fit/member-at.ts';
import type { Placed } from '../fit/types.ts';
import type { Edge, MemberName } from '../order/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import type { Column } from './columns.ts';
import type { ElevationMember } from './types.ts';

type Construction = ShopStandard['construction'];

const WORDS: Readonly<Record<Construction, Readonly<Record<MemberName, string>>>> = {
  'face frame': {
    stile: 'stile',
    'shared-stile': 'shared stile',
    'top-rail': 'top rail',
    'mid-rail': 'mid rail',
    'bottom-rail': 'bottom rail',
  },
  frameless: {
    stile: 'side panel',
    'shared-stile': 'middle panel',
    'top-rail': 'top panel',
    'mid-rail': 'joint between the fronts',
    'bottom-rail': 'bottom panel',
  },
};

/**
 * The members of a cabinet's front: stiles through the whole height, rails between them. Members of no
 * width, a joint between frameless fronts for one, are left out.
 */
export function membersOf(
  columns: readonly Column[],
  outside: Placed,
  construction: Construction,
): readonly ElevationMember[] {
  const member = (name: MemberName, place: Placed): ElevationMember => ({
    name,
    word: WORDS[construction][name],
    ...place,
  });
  const post = (name: MemberName, x: number, w: number) => member(name, { x, y: outside.y, w, h: outside.h });
  const [first, last] = [columns[0], columns.at(-1)];
  if (first === undefined || last === undefined) return [];
  const rightEnd = last.x + last.w;
  const posts = [
    post('stile', outside.x, first.x - outside.x),
    ...columns.slice(1).map((column, index) => {
      const before = columns[index] ?? first;
      const x = before.x + before.w;
      return post('shared-stile', x, column.x - x);
    }),
    post('stile', rightEnd, outside.x + outside.w - rightEnd),
  ];
  const rails = columns.flatMap((column) =>
    railsOf(column, outside).map(([name, y, h]) => member(name, { x: column.x, y, w: column.w, h })),
  );
  return [...posts, ...rails].filter(({ w, h }) => w > 0 && h > 0);
}

/** The rails of a column from the top: name, y and height in mm. */
function railsOf(column: Column, outside: Placed): readonly (readonly [MemberName, number, number])[] {
  const { drawers, first, last } = column;
  const outer = (edge: Edge, rail: MemberName, of: Column['first']): MemberName =>
    of.fit.rules.edges[edge].situation === 'outer' ? rail : 'mid-rail';
  const between = drawers.slice(1).map(({ opening }, index) => {
    const above = drawers[index] ?? first;
    const y = above.opening.y + above.opening.h;
    return ['mid-rail', y, opening.y - y] as const;
  });
  const end = last.opening.y + last.opening.h;
  return [
    [outer('top', 'top-rail', first), outside.y, -outside.y],
    ...between,
    [outer('bottom', 'bottom-rail', last), end, memberAt('bottom', last.fit.rules)],
  ];
}
