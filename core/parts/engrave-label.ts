import type { Finding, Outcome } from '../findings/finding.ts';
import { warning } from '../findings/make.ts';
import { bounds } from '../geometry/measure.ts';
import { rotate } from '../geometry/transform.ts';
import type { PathContour } from '../geometry/types.ts';
import type { Label } from '../jigs/types.ts';
import { labelLines, type LabelLine } from './label-lines.ts';
import type { MachineProfile } from '../machine/profile.ts';
import type { StrokeFont } from './stroke-font.ts';
import { strokeText } from './stroke-text.ts';

/** mm. Smaller capitals are not read at arm's length; common practice, no source. */
const SMALLEST_CAPITAL = 2;

/** The strokes of a label, centred in its room and as large as the profile and the room allow. */
export function engraveLabel(
  label: Label,
  part: string,
  font: StrokeFont,
  machine: MachineProfile,
): Outcome<readonly PathContour[]> {
  // Raised and lowered figures of fractions reach past the capitals: set again, smaller, where they leave the room.
  const lines = labelLines(font, label, machine.capHeight);
  const first = setLabel(label, lines, font, machine);
  const over = overRoom(first.contours, label);
  const scaled = over > 1 ? lines.map((line) => shrunk(line, over)) : lines;
  const { contours, findings } = over > 1 ? setLabel(label, scaled, font, machine) : first;
  const smallest = Math.min(...scaled.map((line) => line.capHeight));
  return {
    value: contours.map((contour) => rotate(contour, label.angle ?? 0, label.center)),
    findings: smallest < SMALLEST_CAPITAL ? [...findings, tooSmall(part, smallest)] : findings,
  };
}

/** Strokes of all lines, not yet turned. */
function setLabel(label: Label, lines: readonly LabelLine[], font: StrokeFont, machine: MachineProfile) {
  const contours: PathContour[] = [];
  const findings: Finding[] = [];
  for (const { text, capHeight, y } of lines) {
    const strokes = strokeText(font, text, {
      capHeight,
      at: { x: label.center.x, y: label.center.y + y },
      align: 'center',
      vertical: 'middle',
      ...(machine.kind === 'laser' ? { kerf: machine.kerf } : {}),
    });
    contours.push(...strokes.value.contours);
    findings.push(...strokes.findings);
  }
  return { contours, findings };
}

/** How many times larger than its room a label is drawn; 1 or less when it fits. */
function overRoom(contours: readonly PathContour[], { center, width, height }: Label): number {
  if (contours.length === 0) return 1;
  const { min, max } = bounds(...contours);
  const across = Math.max(max.x - center.x, center.x - min.x);
  const up = Math.max(max.y - center.y, center.y - min.y);
  return Math.max((2 * across) / width, (2 * up) / height);
}

const shrunk = (line: LabelLine, by: number): LabelLine => ({
  ...line,
  capHeight: line.capHeight / by,
  y: line.y / by,
});

const tooSmall = (part: string, capHeight: number): Finding =>
  warning(
    'parts/label-small',
    `The text on ${part} has room for capitals of ${capHeight.toFixed(1)} mm only; below ${SMALLEST_CAPITAL} mm they are hard to read. A shorter name of the order helps.`,
    {},
    { part, capHeight },
  );
