import type { Finding, Outcome } from '../findings/finding.ts';
import { warning } from '../findings/make.ts';
import { rotate } from '../geometry/transform.ts';
import type { PathContour } from '../geometry/types.ts';
import type { Label } from '../jigs/types.ts';
import { labelLines } from './label-lines.ts';
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
  const lines = labelLines(font, label, machine.capHeight);
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
    contours.push(
      ...strokes.value.contours.map((contour) => rotate(contour, label.angle ?? 0, label.center)),
    );
    findings.push(...strokes.findings);
  }
  const smallest = Math.min(...lines.map(({ capHeight }) => capHeight));
  if (smallest < SMALLEST_CAPITAL) findings.push(tooSmall(part, smallest));
  return { value: contours, findings };
}

const tooSmall = (part: string, capHeight: number): Finding =>
  warning(
    'parts/label-small',
    `The text on ${part} has room for capitals of ${capHeight.toFixed(1)} mm only; below ${SMALLEST_CAPITAL} mm they are hard to read. A shorter order name (--name) helps.`,
    {},
    { part, capHeight },
  );
