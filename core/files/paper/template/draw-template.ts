import type { Outcome } from '../../../findings/finding.ts';
import type { PaperDrawing, TextWidth } from '../page/types.ts';
import type { PaperSettings } from '../sheet/settings.ts';
import { layOut, type Layout } from '../tiles/lay-out.ts';
import type { PaperWords } from '../words/en.ts';
import { templateLines } from './template-lines.ts';
import { templateNotes } from './template-notes.ts';
import type { Template } from './types.ts';

/** A template, drawn and cut up into pages. */
export interface DrawnTemplate {
  readonly template: Template;
  readonly drawing: PaperDrawing;
  readonly layout: Layout;
}

/** Draws a template: first its lines, which say how many pages it needs, then the words, within those pages. */
export function drawTemplate(
  template: Template,
  order: string,
  settings: PaperSettings,
  words: PaperWords,
  measure: TextWidth,
): Outcome<DrawnTemplate | null> {
  const lines = templateLines(template);
  const { value: layout, findings } = layOut(lines, settings, measure);
  if (layout === null) return { value: null, findings };
  const rooms = layout.tiling.tiles.map(({ shows }) => shows);
  const notes = templateNotes({ template, order, rooms, words, measure });
  const drawing = { ...lines, items: [...lines.items, ...notes.lines], notes: notes.notes };
  return { value: { template, drawing, layout }, findings };
}
