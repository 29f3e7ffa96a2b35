import sans from '../assets/stroke-font/sans.json' with { type: 'json' };
import { parseStrokeFont } from '../core/parts/parse-stroke-font.ts';
import type { StrokeFont } from '../core/parts/stroke-font.ts';

/** The font of engraved text. The built page has here what it comes to (`renderer/build/read-constants.ts`). */
export const STROKE_FONT: StrokeFont = parseStrokeFont(sans);
