import type { Corner } from '../fastening/types.ts';
import type { Jig, Vec3 } from '../jigs/types.ts';
import type { Step } from './types.ts';
import { ORIGIN, scale, UP } from './vec.ts';

/** mm. How far away things come from and go to. */
const WAY = 90;

/** The use of a corner drill guide, or of a pull template, step by step. */
export const aidSteps = (jig: Jig, corner: Corner | null, away: Vec3): readonly Step[] =>
  corner === null ? templateSteps(jig, away) : guideSteps(jig, corner);

function guideSteps({ drilling }: Jig, { hand, end }: Corner): readonly Step[] {
  const up = scale(UP, WAY);
  const all = ['front', 'box', 'jig'] as const;
  const touching = [
    'box front inside',
    'box side inside',
    end === 'top' ? 'box top edge' : 'box bottom',
  ] as const;
  return [
    {
      id: 'box',
      title: 'Set box',
      words:
        'The box stands on the back of the front where the jig set it, clamped. Wipe glue and dust out of its corner.',
      shown: ['front', 'box'],
      moves: {},
      touching: [],
      tools: [],
    },
    {
      id: 'seat',
      title: 'Seat guide',
      words: `Lay the guide flat on the inside of the box front in the ${end} corner at the cabinet's ${hand}. ${end === 'top' ? 'Hook its lip over the top edge and press it against the side.' : 'Press it against the side and the bottom of the box.'} Clamp it.`,
      shown: all,
      moves: { jig: { from: up, to: ORIGIN } },
      touching,
      tools: [],
    },
    {
      id: 'drill',
      title: 'Drill',
      words: (drilling?.words ?? []).join(' '),
      shown: [...all, 'bit'],
      moves: {},
      sendsIn: 'bit',
      touching,
      tools: [],
    },
    {
      id: 'lift',
      title: 'Lift off',
      words: 'Draw the bit out while it runs, then lift the guide straight up.',
      shown: all,
      moves: { jig: { from: ORIGIN, to: up } },
      touching: [],
      tools: [],
    },
  ];
}

function templateSteps({ drilling }: Jig, away: Vec3): readonly Step[] {
  const out = scale(away, WAY);
  const both = ['front', 'jig'] as const;
  const touching = ['front edge', 'front back'] as const;
  return [
    {
      id: 'front',
      title: 'Place front',
      words:
        "Lay the front face down on a flat scrap board, before the box is set. The cabinet's left is now on your right: turn the front until the arrow agrees.",
      shown: ['front'],
      moves: { front: { from: scale(UP, WAY), to: ORIGIN } },
      touching: [],
      tools: [],
    },
    {
      id: 'seat',
      title: 'Seat template',
      words: 'Hook the lips over the edges and press them flat; the plate lies on the back. Clamp it.',
      shown: both,
      moves: { jig: { from: out, to: ORIGIN } },
      touching,
      tools: [],
    },
    {
      id: 'drill',
      title: 'Drill',
      words: (drilling?.words ?? []).join(' '),
      shown: both,
      moves: {},
      touching,
      tools: [],
    },
    {
      id: 'lift',
      title: 'Lift off',
      words: 'Slide the template straight out past the edges.',
      shown: both,
      moves: { jig: { from: ORIGIN, to: out } },
      touching: [],
      tools: [],
    },
  ];
}
