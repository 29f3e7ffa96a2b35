import { z } from 'zod';
import { lengthText, strict, words } from '../rules/standard-fields.ts';

export const MACHINE_FORMAT = 'overhang-machine';
export const MACHINE_VERSION = 2;

const length = lengthText('mm');
const lengthOrZero = lengthText('mm', { zero: true });

const layer = strict({
  name: z
    .string()
    .regex(/^[A-Z0-9_-]{1,31}$/, 'a layer name has capitals, digits, _ and -, 31 characters at most'),
  colorIndex: z.int().min(1).max(255),
  color: z.string().regex(/^#[0-9a-f]{6}$/, 'a colour is # and six digits 0 to f'),
});

/** The document of a machine profile, decoded; lengths are text such as `0.2 mm` or `1/4 in`. */
export const machineSchema = strict({
  format: z.literal(MACHINE_FORMAT),
  version: z.literal(MACHINE_VERSION),
  name: words,
  note: z.string(),
  kind: z.enum(['laser', 'router', 'none']),
  sheet: strict({ material: words, thickness: length }),
  sheets: strict({
    stock: z
      .array(
        strict({
          name: words,
          width: length,
          height: length,
          count: z.int().min(0).nullable(),
          offcut: z.boolean(),
        }),
      )
      .min(1, 'it is empty; give one size of sheet at least'),
    edgeMargin: lengthOrZero,
    spacing: lengthOrZero,
    turn: z.enum(['quarter', 'half', 'none']),
    effort: z.int().min(0),
  }),
  tabs: strict({ use: z.enum(['none', 'marks', 'bridges']), width: length, spacing: length }),
  kerf: lengthOrZero,
  compensation: z.enum(['file', 'machine']),
  joint: z.enum(['pin', 'key']),
  pinDiameter: length,
  fit: strict({ pin: lengthOrZero, slot: lengthOrZero }),
  reliefRadius: length,
  capHeight: length,
  layers: strict({
    engrave: layer,
    drill: layer,
    pocket: layer,
    'cut-inner': layer,
    tab: layer,
    'cut-outer': layer,
  }),
  dxf: strict({
    version: z.enum(['R12', 'R2000']),
    unit: z.enum(['mm', 'in']),
    repeatFirstPoint: z.boolean(),
    arcsAsLines: z.boolean(),
  }),
});
