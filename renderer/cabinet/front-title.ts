import type { ElevationDrawer } from '../../core/elevation/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { formatLength } from '../../core/units/format-length.ts';
import type { Projection } from '../drawing/projection.ts';
import { boxAbout, DIGIT, LETTER, LINE, type Box } from '../drawing/text-box.ts';
import { STATE_WORDS } from './state-words.ts';

/** What may stand on a front, each line with the box that it takes. Pixels. */
export interface FrontTitle {
  readonly rowId: string;
  readonly name: TitleLine;
  /** Width and height of the front; null where it has no room for them. */
  readonly size: TitleLine | null;
}

export interface TitleLine {
  readonly text: string;
  /** The middle of the line. */
  readonly x: number;
  readonly y: number;
  readonly box: Box;
}

/** The name and size of a front, or null where not even the name has room. */
export function frontTitle(
  drawer: ElevationDrawer,
  projection: Projection,
  unit: LengthUnit,
  rem: number,
): FrontTitle | null {
  const { rowId, front } = drawer;
  const { x, y } = projection.toScreen({ x: front.x + front.w / 2, y: front.y + front.h / 2 });
  const [w, h] = [front.w * projection.scale - 0.5 * rem, front.h * projection.scale];
  const name = [...namesOf(drawer), shortened(drawer.name, Math.floor(w / (LETTER * rem)))].find(
    (text) => text !== '' && text.length * LETTER * rem <= w,
  );
  if (name === undefined || h < LINE * rem) return null;
  const size = `${formatLength(front.w, unit)} × ${formatLength(front.h, unit)}`;
  const hasSize = h > 3.4 * rem && size.length * DIGIT * rem <= w;
  const line = (text: string, letter: number, below: number): TitleLine => {
    const middle = { x, y: y + below * rem };
    return { text, ...middle, box: boxAbout(middle, text.length * letter * rem, LINE * rem) };
  };
  return {
    rowId,
    name: line(name, LETTER, hasSize ? -0.6 : 0),
    size: hasSize ? line(size, DIGIT, 0.7) : null,
  };
}

/** From the fullest to the shortest way to tell a drawer and its state. */
function namesOf({ name, qty, state }: ElevationDrawer): readonly string[] {
  const { mark, word } = STATE_WORDS[state];
  const several = qty > 1 ? `${qty}× ${name}` : name;
  if (state === 'right') return [several, name];
  return [`${mark} ${several}: ${word}`, `${mark} ${several}`, `${mark} ${name}`, mark];
}

/** The first letters of a name that tell something; empty where there is no room for four. */
const shortened = (name: string, letters: number): string =>
  letters < 5 ? '' : `${name.slice(0, letters - 1).trimEnd()}…`;
