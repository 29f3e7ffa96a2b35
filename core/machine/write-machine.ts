import type { LengthUnit } from '../units/unit.ts';
import { writeLength } from '../units/write-length.ts';
import { MACHINE_FORMAT, MACHINE_VERSION } from './machine-schema.ts';
import type { LayerStyle, MachineProfile } from './profile.ts';

/** A machine is told in millimetres, as its sheets and tools are measured. */
const UNIT: LengthUnit = 'mm';

/** Writes a machine profile as JSON text that `parseMachine` reads back the same, ending in a line break. */
export const writeMachine = (machine: MachineProfile): string =>
  `${JSON.stringify(machineDocument(machine), undefined, 2)}\n`;

/** A machine profile as the JSON document that `parseMachine` reads; its fields stand in one order always. */
export function machineDocument(machine: MachineProfile): object {
  const length = (mm: number): string => writeLength(mm, UNIT);
  const layer = ({ name, colorIndex, color }: LayerStyle) => ({ name, colorIndex, color });
  const { sheet, sheets, tabs, fit, layers, dxf } = machine;
  return {
    format: MACHINE_FORMAT,
    version: MACHINE_VERSION,
    name: machine.name,
    note: machine.note,
    kind: machine.kind,
    sheet: { material: sheet.material, thickness: length(sheet.thickness) },
    sheets: {
      stock: sheets.stock.map(({ name, width, height, count, offcut }) => ({
        name,
        width: length(width),
        height: length(height),
        count,
        offcut,
      })),
      edgeMargin: length(sheets.edgeMargin),
      spacing: length(sheets.spacing),
      turn: sheets.turn,
      effort: sheets.effort,
    },
    tabs: { use: tabs.use, width: length(tabs.width), spacing: length(tabs.spacing) },
    kerf: length(machine.kerf),
    compensation: machine.compensation,
    joint: machine.joint,
    pinDiameter: length(machine.pinDiameter),
    fit: { pin: length(fit.pin), slot: length(fit.slot) },
    reliefRadius: length(machine.reliefRadius),
    capHeight: length(machine.capHeight),
    layers: {
      engrave: layer(layers.engrave),
      drill: layer(layers.drill),
      pocket: layer(layers.pocket),
      'cut-inner': layer(layers['cut-inner']),
      tab: layer(layers.tab),
      'cut-outer': layer(layers['cut-outer']),
    },
    dxf: {
      version: dxf.version,
      unit: dxf.unit,
      repeatFirstPoint: dxf.repeatFirstPoint,
      arcsAsLines: dxf.arcsAsLines,
    },
  };
}
