import { readFileSync } from 'node:fs';
import { z } from 'zod';

/** A text that is nasty or once failed, and why it is here. */
export interface CorpusText {
  readonly why: string;
  readonly text: string;
}

const schema = z.array(
  z.strictObject({
    why: z.string(),
    text: z.string(),
    /** Stands before `text`, so many times: long texts need no long files. */
    repeat: z.string().optional(),
    times: z.int().optional(),
  }),
);

/** The texts of `corpus/texts.json`, halves of surrogate pairs and unprintable characters written as escapes. */
export const corpus = (): readonly CorpusText[] =>
  schema
    .parse(JSON.parse(readFileSync(new URL('./corpus/texts.json', import.meta.url), 'utf8')))
    .map(({ why, text, repeat = '', times = 0 }) => ({ why, text: repeat.repeat(times) + text }));
