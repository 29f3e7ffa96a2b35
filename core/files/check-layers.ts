import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { OPERATIONS, type Operation } from '../machine/operations.ts';
import type { Drawing } from './drawing.ts';

/** Requirement DXF-5. `0` is every file's own layer, on which nothing may be drawn. */
const LAYER_NAME = /^[A-Z0-9_-]{1,31}$/;

/** DXF colour numbers of a layer; 0 and 256 mean "by block" and "by layer". */
const [FIRST_COLOR, LAST_COLOR] = [1, 255];

/** Whether the layers of the operations that a drawing uses can be written, one layer for each. */
export function checkLayers(drawing: Drawing): readonly Finding[] {
  const used = OPERATIONS.filter((operation) => drawing.features.some((f) => f.operation === operation));
  const takenBy = new Map<string, Operation>();
  return used.flatMap((operation) => {
    const { name, color, colorIndex } = drawing.layers[operation];
    const at = { field: `layers.${operation}` };
    const findings: Finding[] = [];
    if (!LAYER_NAME.test(name) || name === '0') {
      const rule = 'use 1 to 31 of A-Z, 0-9, _ and -, and not 0 alone';
      findings.push(
        error('files/layer-name', `The layer name “${name}” of ${operation} can't be used: ${rule}.`, at, {
          name,
          operation,
        }),
      );
    }
    const other = takenBy.get(name);
    if (other !== undefined) {
      findings.push(
        error(
          'files/layer-shared',
          `${other} and ${operation} both use the layer “${name}”; each needs its own.`,
          at,
          {
            name,
            operation,
            other,
          },
        ),
      );
    }
    takenBy.set(name, operation);
    if (!Number.isInteger(colorIndex) || colorIndex < FIRST_COLOR || colorIndex > LAST_COLOR) {
      findings.push(
        error(
          'files/layer-color',
          `The colour number ${colorIndex} of ${operation} must be a whole number from 1 to 255.`,
          at,
          {
            colorIndex: String(colorIndex),
            operation,
          },
        ),
      );
    }
    if (!/^#[0-9a-fA-F]{6}$/.test(color)) {
      findings.push(
        error(
          'files/layer-color',
          `The colour “${color}” of ${operation} must be # and six hexadecimal digits.`,
          at,
          {
            color,
            operation,
          },
        ),
      );
    }
    return findings;
  });
}
