import type { Finding } from '../../core/findings/finding.ts';
import { parseMachine } from '../../core/machine/parse-machine.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import { writeMachine } from '../../core/machine/write-machine.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { itemsAt, textAt, withValue, type Json, type Path } from '../document/json.ts';
import { restateLength } from '../document/restate.ts';

/** A machine profile in work: its document in the unit that is shown. */
export interface EditedMachine {
  readonly document: Json;
  readonly shown: LengthUnit;
}

/** Every length of a profile's document besides those of its stock. */
const LENGTHS: readonly Path[] = [
  ['sheets', 'edgeMargin'],
  ['sheets', 'spacing'],
  ['tabs', 'width'],
  ['tabs', 'spacing'],
  ['sheet', 'thickness'],
  ['kerf'],
  ['pinDiameter'],
  ['fit', 'pin'],
  ['fit', 'slot'],
  ['reliefRadius'],
  ['capHeight'],
];

const lengthsOf = (document: Json): readonly Path[] => [
  ...LENGTHS,
  ...itemsAt(document, ['sheets', 'stock']).flatMap((_, index) =>
    ['width', 'height'].map((side) => ['sheets', 'stock', index, side]),
  ),
];

/** A profile reads bare numbers as millimetres. */
const OWN: LengthUnit = 'mm';

const restate = (document: Json, from: LengthUnit, to: LengthUnit): Json =>
  lengthsOf(document).reduce<Json>(
    (now, path) => withValue(now, path, restateLength(textAt(now, path), from, to)),
    document,
  );

/** A profile as its document, in words of the unit that is shown. */
export const editMachine = (machine: MachineProfile, shown: LengthUnit): EditedMachine => ({
  document: restate(JSON.parse(writeMachine(machine)), OWN, shown),
  shown,
});

/** The same work in words of another unit. */
export const showIn = (edited: EditedMachine, shown: LengthUnit): EditedMachine =>
  edited.shown === shown ? edited : { document: restate(edited.document, edited.shown, shown), shown };

/** What the document says, or what is wrong with it; bare numbers are in the unit that is shown. */
export function readEdited({ document, shown }: EditedMachine): {
  readonly value: MachineProfile | null;
  readonly findings: readonly Finding[];
} {
  return parseMachine(restate(document, shown, OWN), 'machine profile');
}
