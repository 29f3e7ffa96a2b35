import { z } from 'zod';
import type { StrokeFont } from './stroke-font.ts';

const schema: z.ZodType<StrokeFont> = z.object({
  name: z.string().min(1),
  capHeight: z.number().positive(),
  glyphs: z.record(
    z.string(),
    z.object({
      advance: z.number().positive(),
      strokes: z.array(z.array(z.tuple([z.number(), z.number()])).min(2)),
    }),
  ),
});

/** The stroke font of a JSON document that ships with the program; another shape is a programmer's error. */
export const parseStrokeFont = (data: unknown): StrokeFont => schema.parse(data);
