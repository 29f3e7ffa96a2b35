import { formatLength } from '../../units/format-length.ts';
import type { BuildContext } from '../types.ts';
import { sizeText } from './aid-phrases.ts';
import type { TemplateSetup } from './types.ts';

/** What is engraved on a template's plate; its frame at a top corner is turned half about. */
export function templateWords(id: string, setup: TemplateSetup, context: BuildContext) {
  const { at, bit } = setup;
  const where = {
    left: ['TOP LEFT CORNER', '← LEFT EDGE'],
    right: ['TOP RIGHT CORNER', 'RIGHT EDGE →'],
    middle: ['CENTER LINE AT NOTCH'],
  }[at];
  return {
    title: `${id}  BIT ${sizeText(bit, context.unit)}`,
    phrases: ['PULL TEMPLATE', 'ON BACK OF FRONT', ...where, '↓ TOP EDGE', '← CABINET LEFT'],
  };
}

/** What must be known of a template, in sentences. */
export function templateSentences(
  id: string,
  { at, holes, bit }: TemplateSetup,
  thickness: number,
  context: BuildContext,
): readonly string[] {
  const long = (mm: number): string => formatLength(mm, context.unit);
  const from = at === 'middle' ? 'from the centre line' : `from the ${at} edge`;
  const places = holes.map(({ x, y }) => `${long(Math.abs(x))} ${from} and ${long(y)} from the top edge`);
  return [
    `${id} places ${holes.length === 1 ? 'a hole' : `${holes.length} holes`} of ${sizeText(bit, context.unit)}: ${[...new Set(places)].join('; ')}, measured at the face.`,
    'It lies on the back of the front, as the jigs do, before the box is set: the holes go right through. Clamp a flat scrap board under the face, or the bit tears it out; finish from the back in one go.',
    ...(at === 'middle'
      ? [
          'The front is too wide, or too low, for a plate from a side edge: pencil the centre line across the back first, and set the notch to it.',
        ]
      : []),
    `A plate of ${sizeText(thickness, context.unit)} starts the holes in their places and holds the bit over that length only: keep the drill square, or finish on a drill press.`,
  ];
}
