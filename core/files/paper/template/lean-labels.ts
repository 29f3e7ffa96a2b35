import type { Fastening } from '../../../fastening/types.ts';
import { roundTo } from '../../../units/tolerances.ts';
import { point, text } from '../page/draw.ts';
import type { Note, TextWidth } from '../page/types.ts';
import type { PaperWords } from '../words/en.ts';
import { SCREW_MARK } from './screw-marks.ts';
import { screwPoints } from './screw-points.ts';

const SIZE = 3;

/** The angle of each leaning screw, next to its mark on the side towards the middle of the box. */
export function leanLabels(
  { places, fit }: Fastening,
  words: PaperWords,
  measure: TextWidth,
): readonly Note[] {
  return places.flatMap((place): readonly Note[] => {
    if (place.angle === 0) return [];
    const { head } = screwPoints(place, fit.boxFront);
    const label = words.template.lean(roundTo(place.angle, 1));
    const w = measure(label, SIZE, true);
    // The cabinet's left is at the right of the back view.
    const inwards = place.corner.hand === 'left' ? -1 : 1;
    const x = head.x + inwards * (SCREW_MARK.arm + 2);
    const y = head.y - SIZE * 0.35;
    return [
      {
        box: { x: inwards > 0 ? x : x - w, y, w, h: SIZE },
        items: [
          text(label, point(x, y), SIZE, { bold: true, halo: true, anchor: inwards > 0 ? 'start' : 'end' }),
        ],
      },
    ];
  });
}
