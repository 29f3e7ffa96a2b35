import makerjs from 'makerjs';
import { describe, expect, test } from 'vitest';
import { writeDxf } from '../../core/files/dxf.ts';
import { makerModel } from '../../core/files/makerjs-model.ts';
import { readWithDxfParser } from '../readers/dxf-parser.ts';
import type { ReadEntity } from '../readers/types.ts';
import { circle, drawingOf, feature, LAYERS, PLATE, ring, SETTINGS } from './sample-drawing.ts';

/** A plate whose contours nowhere touch, which is what makerjs's own exporter is right about. */
const SIMPLE = drawingOf(
  ...PLATE.features.filter(({ operation }) => operation !== 'engrave'),
  feature('engrave', ring([0, 12], [20, 12], [20, 18, 0.5], [0, 18])),
);

/** makerjs's exporter with each layer named by its operation; only readers' concerns are completed. */
function exportedByMakerjs(): readonly ReadEntity[] {
  const { value } = makerModel(SIMPLE);
  if (value === null) throw new Error('the drawing was refused');
  const layerOptions = Object.fromEntries(
    Object.entries(LAYERS).map(([operation, { colorIndex }]) => [operation, { color: colorIndex }]),
  );
  const text = makerjs.exporter.toDXF(value, {
    usePOLYLINE: true,
    layerOptions,
    units: makerjs.unitType.Millimeter,
  });
  // The reader insists on extents and measurement, which this exporter leaves out.
  const corners = ['$EXTMIN', '$EXTMAX'].map((name) => `9\n${name}\n10\n0\n20\n0\n`).join('');
  const completed = `${corners}9\n$MEASUREMENT\n70\n1\n9\n$INSUNITS`;
  return readWithDxfParser(text.replace('9\n$INSUNITS', completed)).entities;
}

/** A closed outline whatever vertex it starts at and whichever way it runs: lengths, turns and corners, sorted. */
function signature({ circle: round, vertices, layer, closed }: ReadEntity): string {
  const shape =
    round === null
      ? vertices.map(([x, y]) => `${x.toFixed(4)},${y.toFixed(4)}`)
      : [round.map((value) => value.toFixed(4)).join()];
  const bulges = vertices.map(([, , bulge]) => Math.abs(bulge).toFixed(5));
  return [layer, String(closed), ...[...shape].sort(), ...[...bulges].sort()].join(' ');
}

describe('makerModel', () => {
  test('has a model for each operation, in running order, with a path for each segment', () => {
    const { value } = makerModel(PLATE);
    expect(Object.keys(value?.models ?? {})).toEqual([
      'engrave',
      'drill',
      'pocket',
      'cut-inner',
      'cut-outer',
    ]);
    const outline = value?.models?.['cut-outer']?.models?.['contour0'];
    expect(Object.values(outline?.paths ?? {}).map(({ type }) => type)).toEqual([
      'line',
      'arc',
      'line',
      'arc',
      'line',
      'arc',
    ]);
    expect(value?.models?.['cut-outer']?.layer).toBe('cut-outer');
  });

  test('DXF-1: what makerjs itself exports of it is what writeDxf writes', () => {
    const names = Object.fromEntries(
      Object.entries(LAYERS).map(([operation, { name }]) => [operation, name]),
    );
    const theirs = exportedByMakerjs().map((entity) =>
      signature({ ...entity, layer: names[entity.layer] ?? '' }),
    );
    const ours = readWithDxfParser(writeDxf(SIMPLE, SETTINGS).value).entities.map(signature);
    expect(ours.length).toBe(SIMPLE.features.length);
    expect([...theirs].sort()).toEqual([...ours].sort());
  });

  test('shares nothing with the drawing: makerjs may change it', () => {
    const before = structuredClone(PLATE);
    const { value } = makerModel(PLATE);
    if (value === null) throw new Error('the drawing was refused');
    makerjs.model.originate(value);
    makerjs.model.scale(makerjs.model.move(value, [100, 100]), 3);
    expect(PLATE).toEqual(before);
  });

  test('refuses what makerjs would take: NaN', () => {
    const { value, findings } = makerModel(drawingOf(feature('drill', circle(0, 0, Number.NaN))));
    expect([value, findings.map(({ code }) => code)]).toEqual([null, ['files/geometry']]);
  });
});
