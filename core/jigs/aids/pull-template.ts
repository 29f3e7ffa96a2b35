import { tanDegrees } from '../../units/angle.ts';
import { mmText } from '../../units/mm-text.ts';
import { outsideLimits } from '../limits.ts';
import { designLip, type Lip } from '../lip.ts';
import { mirrorJig } from '../mirror-jig.ts';
import type { BuildContext, Jig } from '../types.ts';
import { centerTemplate, centerTemplateSize } from './center-template.ts';
import { pullDrilling } from './pull-bores.ts';
import { templateSentences } from './template-labels.ts';
import { templateArms, templatePlate } from './template-plate.ts';
import type { AidKind, TemplateSetup } from './types.ts';

/** mm. A longer plate would flex; common practice, no source. */
const LONGEST = 400;

/**
 * Pull template: a plate on the back of the front with lips behind its top edge and one side edge, and a bore at
 * each of the pull's holes; no measuring. Handed. Where the holes are too far from the side edge for a plate, a
 * strip over the top edge alone, whose notch is set to a pencilled centre line.
 */
export const pullTemplate: AidKind<TemplateSetup> = {
  name: 'pull template',
  code: 'T',
  registersOn: "the front's top edge, and a side edge or a centre line",
  parameters: [
    {
      name: 'width',
      words: 'a template',
      meaning: 'from the side edge (of both halves from the centre line)',
      unit: 'mm',
      min: 60,
      max: LONGEST,
    },
    {
      name: 'height',
      words: 'a template',
      meaning: 'down from the top edge',
      unit: 'mm',
      min: 20,
      max: LONGEST,
    },
    {
      name: 'bit',
      words: 'a bit',
      meaning: 'diameter of the drill that it guides',
      unit: 'mm',
      min: 1,
      max: 20,
    },
  ],
  assembly:
    'Stack the plate, engraved face up, on the dust layer if there is one, and both on the lip layers. Pins or keys go in one way only. Left and right are not alike; the arrow points to the cabinet’s left.',
  use: 'Lay the front face down on a flat scrap board, before the box is set. Hook the lips over the top corner that the label names and press them flat to the edges (with a notch instead: press the lip to the top edge and set the notch to the pencilled centre line), and clamp the template. Drill right through the front into the board, the drill held square. A hole that the box front comes to cover is carried on through it from the face when the front is fixed, with a scrap behind.',
  refuses(setup, context) {
    const lip = lipOf(setup, context);
    if (typeof lip === 'string') return lip;
    if (setup.holes.length === 0) return 'there is no hole to place';
    const outside = outsideLimits(pullTemplate.parameters, parametersOf(setup));
    if (outside !== null) return outside;
    const { front, at } = setup;
    const { width, height } = parametersOf(setup);
    if (at !== 'middle') {
      return templateArms(setup).fits
        ? null
        : `a template of ${mmText(width)} by ${mmText(height)} is larger than the front of ${mmText(front.x)} by ${mmText(front.y)}`;
    }
    return width <= front.x && height <= front.y
      ? null
      : `a template of ${mmText(width)} by ${mmText(height)} is larger than the front of ${mmText(front.x)} by ${mmText(front.y)}`;
  },
  build(id, setup, context) {
    const lip = lipOf(setup, context);
    if (typeof lip === 'string') throw new RangeError(`pull template: ${lip}`);
    const { at } = setup;
    const { thickness } = context.machine.sheet;
    const { pieces, seat, pins } = (at === 'middle' ? centerTemplate : templatePlate)(
      id,
      setup,
      lip,
      context,
    );
    const built: Jig = {
      id,
      kind: pullTemplate.name,
      hand: at === 'middle' ? null : 'left',
      parameters: parametersOf(setup),
      pieces,
      pins,
      seats: [seat],
      sensitivity: {
        kerf: 0.5,
        sheetThickness: lip.layers * tanDegrees(setup.backBevel),
        why: `kerf 0.5: a lip is cut on one side and a bore all round, so that a cut that takes more brings the bores farther from the edge by half of it; thickness${setup.backBevel === 0 ? ' 0: the edge is square, so the depth of the lip does not matter' : ': a deeper lip meets the bevelled edge nearer to the face'}`,
      },
      drilling: {
        end: 'top',
        thickness,
        bores: pullDrilling(setup, thickness),
        kerfShift: { x: at === 'middle' ? 0 : 0.5, y: 0.5 },
        words: templateSentences(id, setup, thickness, context),
      },
    };
    return at === 'right' ? mirrorJig(built) : built;
  },
};

const lipOf = (setup: TemplateSetup, { machine }: BuildContext): Lip | string =>
  designLip(setup, machine.sheet.thickness, machine.kind === 'router');

function parametersOf(setup: TemplateSetup) {
  if (setup.at === 'middle') {
    const { length, reach } = centerTemplateSize(setup);
    return { width: length, height: reach, bit: setup.bit };
  }
  const { size } = templateArms(setup);
  return { width: size.x, height: size.y, bit: setup.bit };
}
