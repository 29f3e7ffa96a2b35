import { describe, expect, test } from 'vitest';
import type { Fastening, ScrewPlace } from '../../../core/fastening/types.ts';
import { groupSetups } from '../../../core/files/paper/instructions/group-setups.ts';
import { setupSteps } from '../../../core/files/paper/instructions/steps.ts';
import type { PaperSetup, SetupAid } from '../../../core/files/paper/instructions/types.ts';
import { instructionsPdf } from '../../../core/files/paper/instructions-pdf.ts';
import { groupTemplates } from '../../../core/files/paper/template/group-templates.ts';
import { EN } from '../../../core/files/paper/words/en.ts';
import { drawerName } from '../../../core/fit/drawer-name.ts';
import type { DrawerFit } from '../../../core/fit/types.ts';
import { fitOf } from '../../fit/budget/fits.ts';
import { demoFits } from './fits.ts';
import { leaning } from './made-up-fastening.ts';
import { PAPER_FONTS } from './paper-fonts.ts';
import { readPdf } from './read-pdfjs.ts';
import { same } from './told.ts';
import { collisions, wordsOf } from './words-on-page.ts';

const { order, fits } = demoFits('harbor-library');
const [some] = fits;
if (some === undefined) throw new Error('no drawer');

/** mm. The box front of these tests, 12 mm, and one of a lean of 35°: 12 / cos 35° = 14.65, told as 14.5. */
const fit: DrawerFit = { ...some, unit: 'mm', boxFront: 12 };

/** A setup of drawers of one fit, set by their paper templates, or by nothing without them. */
function setupOf(fastening: Fastening, paper = true): PaperSetup {
  const templates = paper ? groupTemplates([{ fit: fastening.fit, fastening }]) : [];
  const [setup] = groupSetups({ fits: [fastening.fit], uses: [], fasteningOf: () => fastening, templates });
  if (setup === undefined) throw new Error('no setup');
  return setup;
}

const stepsOf = (fastening: Fastening, paper = true): readonly string[] =>
  setupSteps(setupOf(fastening, paper), EN);

const withAids = (setup: PaperSetup, aids: readonly SetupAid[]): PaperSetup => ({
  ...setup,
  variants: setup.variants.map((variant) => ({ ...variant, aids })),
});

/** A jig that sets the bottom, so that the setup is one with jigs. */
const withJig = (setup: PaperSetup): PaperSetup => ({
  ...setup,
  jigs: [{ id: 'B1', kind: 'bottom fence', edges: ['bottom'], sets: [20], twoWay: false }],
});

const guidesOf = (places: readonly ScrewPlace[]): readonly SetupAid[] =>
  places.map(({ corner, index }, at) => ({ id: `G${at + 1}`, corner, screws: [index], bores: 1 }));

function clearing(degrees: number, clearanceDiameter: number): Fastening {
  const fastening = leaning(fit, degrees);
  return {
    ...fastening,
    holes: fastening.holes === null ? null : { ...fastening.holes, clearanceDiameter },
  };
}

const at = (steps: readonly string[], words: string): number =>
  steps.findIndex((step) => step.includes(words));

describe('setupSteps and the clearance in the box front', () => {
  test('setupSteps opens the box front after the pilots and before the screws, to the depth of the box front', () => {
    const steps = stepsOf(clearing(0, 4.5));
    const clear = at(steps, 'open the holes in the box front only');
    expect(clear).toBe(at(steps, 'drill the pilot holes') + 1);
    expect(clear).toBe(steps.indexOf(EN.sheets.drive) - 1);
    expect(steps[clear]).toContain('4.5 mm');
    expect(steps[clear]).toContain('Depth stop: 12 mm, the box front’s thickness.');
    expect(steps[clear]).not.toContain('lean');
  });

  test('setupSteps tells the longer way along a lean, and takes the guides of the pilots out first', () => {
    const fastening = clearing(35, 4.5);
    const steps = setupSteps(withAids(setupOf(fastening), guidesOf(fastening.places)), EN);
    const step = steps[at(steps, 'box front only')] ?? '';
    expect(step.startsWith(EN.sheets.takeGuidesOut)).toBe(true);
    expect(step).toContain('keep to each hole’s lean');
    expect(step).toContain('; 14.5 mm at 35°.');
  });

  test('setupSteps opens nothing where the pilot goes through both', () => {
    expect(at(stepsOf(clearing(0, 0)), 'box front only')).toBe(-1);
  });
});

describe('setupSteps and screws that lean without a guide', () => {
  test('setupSteps says how to lean a bit by hand, and only then', () => {
    expect(stepsOf(leaning(fit, 9))).toContain(EN.sheets.leanByHand);
    expect(stepsOf(leaning(fit, 0))).not.toContain(EN.sheets.leanByHand);
    const fastening = leaning(fit, 9);
    const guided = withAids(setupOf(fastening), guidesOf(fastening.places));
    expect(setupSteps(guided, EN)).not.toContain(EN.sheets.leanByHand);
    const partly = withAids(setupOf(fastening), guidesOf(fastening.places.slice(1)));
    expect(setupSteps(partly, EN)).toContain(EN.sheets.leanByHand);
  });

  test('instructionsPdf tells for each such screw which edges the tip goes towards, whole and apart', async () => {
    const straight = leaning(fit, 9);
    const ways: readonly ScrewPlace['lean'][] = [
      { side: 9, rail: 0 },
      { side: 0, rail: 9 },
      { side: 6, rail: 7 },
      { side: 0, rail: 9 },
    ];
    const places = straight.places.map((place, index) => ({ ...place, lean: ways[index] ?? place.lean }));
    const setups = [setupOf({ ...straight, places })];
    const [page] = await readPdf(
      (await instructionsPdf({ order, setups, fonts: PAPER_FONTS })).value ?? new Uint8Array(),
    );
    if (page === undefined) throw new Error('no page');
    const words = wordsOf(page).replaceAll(/\s+/g, ' ');
    for (const way of ['16 mm × 20 mm to side', '16 mm × 20 mm to top', '6° to side, 7° to bottom'])
      expect(words).toContain(way);
    expect(words).not.toContain('…');
    expect(same(collisions(page), [], page.label)).toBe('');
  });
});

describe('setupSteps and the holes of the pull', () => {
  const paper = leaning(fit, 0);
  const outside = { ...paper.pullHoles, centers: [{ x: 5, y: 5 }] };

  test('setupSteps carries holes on through the box front after it is fixed, where it covers them', () => {
    const steps = stepsOf(paper);
    expect(at(steps, 'drill on through it')).toBeGreaterThan(steps.indexOf(EN.sheets.drive));
    expect(stepsOf({ ...paper, pullHoles: outside })).not.toContain(EN.sheets.pullsInBox);
    expect(stepsOf({ ...paper, pullHoles: { ...outside, centers: [] } })).not.toContain(EN.sheets.pullsInBox);
  });

  test('setupSteps counts a hole whose rim only is over the box', () => {
    const edge = fit.overhang.bottom;
    const hole = (under: number) => ({
      ...paper,
      pullHoles: { diameter: 5, centers: [{ x: fit.frontW / 2, y: edge - under }] },
    });
    expect(stepsOf(hole(2.4))).toContain(EN.sheets.pullsInBox);
    expect(stepsOf(hole(2.6))).not.toContain(EN.sheets.pullsInBox);
  });

  test('setupSteps sends to the paper template where no pull template is cut, before the jigs are seated', () => {
    const setup = withJig(setupOf(paper));
    const steps = setupSteps(setup, EN);
    expect(steps.indexOf(EN.sheets.pullsOnPaper(false))).toBe(1);
    const cut = withAids(setup, [{ id: 'T1L', corner: null, screws: [], bores: 2 }]);
    expect(at(setupSteps(cut, EN), 'paper template')).toBe(-1);
    const [variant] = setup.variants;
    if (variant === undefined) throw new Error('no variant');
    const mixed = { ...setup, variants: [variant, ...cut.variants] };
    expect(setupSteps(mixed, EN)).toContain(EN.sheets.pullsOnPaper(true));
    expect(setupSteps({ ...setup, variants: [] }, EN)).toEqual([]);
    expect(at(setupSteps(withJig(setupOf(paper, false)), EN), 'paper template')).toBe(-1);
  });

  test('setupSteps without jigs takes the paper off before the pull is drilled and the box is set', () => {
    const steps = stepsOf(paper);
    const off = at(steps, 'Take the paper off');
    expect(off).toBeGreaterThan(0);
    expect(steps.slice(off + 1, off + 3)).toEqual([EN.sheets.pullsPricked, EN.sheets.setOnMarks]);
  });
});

describe('setupSteps and a front that starts low', () => {
  // 3/32 in low over a gap of 3/32 in: it would touch. 0.6 mm more of gap, and it would not.
  const inset = fitOf({ style: 'inset', openingW: 500, openingH: 200 });
  const gap = inset.gaps.bottom ?? NaN;
  const hungOver = (bottom: number | null) =>
    stepsOf(leaning({ ...inset, gaps: { ...inset.gaps, bottom } }, 0)).at(-1) ?? '';

  test('setupSteps has it raised before the drawer is closed, where the gap below is no larger by 0.5 mm', () => {
    expect(inset.rules.startLow.value).toBeCloseTo(gap, 9);
    for (const bottom of [gap - 1, gap, gap + 0.4])
      expect(hungOver(bottom)).toContain('before you close the drawer');
    for (const bottom of [gap + 0.6, null]) expect(hungOver(bottom)).not.toContain('close');
  });
});

describe('setupSteps without a screw', () => {
  const none: Fastening = { ...leaning(fit, 0), screw: null, places: [], holes: null };

  test('setupSteps stops before anything is drilled for a screw', () => {
    for (const steps of [stepsOf(none), setupSteps(withJig(setupOf(none)), EN)]) {
      expect(steps.at(-1)).toBe(EN.sheets.stop([]));
      for (const words of ['pilot', 'Drive', 'Hang']) expect(at(steps, words)).toBe(-1);
    }
  });

  test('setupSteps gives the reason and its first cure, of the place that is missed by most', () => {
    const [nearest] = leaning(fit, 0).places;
    const { screw } = leaning(fit, 0);
    if (nearest === undefined || screw === null) throw new Error('no screw');
    const miss = (hand: 'left' | 'right', over: number): Fastening['impossible'][number] => ({
      corner: { hand, end: 'top' },
      index: 0,
      along: 'end',
      nearest,
      screw,
      margins: [{ limit: 'groove', over, is: 3 + over, least: 3, against: 'the groove' }],
      cures: ['A wider stile would do.', 'A shorter screw would do.'],
    });
    const last = stepsOf({ ...none, impossible: [miss('left', -0.5), miss('right', -1)] }).at(-1);
    expect(last).toBe(
      EN.sheets.stop([
        `${drawerName(fit.drawer)}: in the top right corner, #8 x 1-1/4 in pan comes nearest: there is 2 mm at the groove, where 3 mm must be.`,
        'A wider stile would do.',
      ]),
    );
  });
});
