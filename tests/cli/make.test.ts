import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Papa from 'papaparse';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { call, ORDER, temporaryFolder } from './temporary.ts';

const folder = temporaryFolder();
const order = join(folder, 'kitchen.csv');
writeFileSync(order, ORDER);

const filesIn = (path: string): readonly string[] =>
  readdirSync(path, { recursive: true })
    .map(String)
    .filter((name) => statSync(join(path, name)).isFile())
    .toSorted();

const read = (path: string) => readFileSync(path, 'utf8');

const manifestSchema = z.object({
  files: z.array(
    z.object({
      path: z.string(),
      size: z.number(),
      sha256: z.string(),
      report: z
        .object({ unit: z.string(), entities: z.number(), open_contours_on_cut_layers: z.number() })
        .optional(),
    }),
  ),
  parts: z.array(
    z.object({
      id: z.string(),
      files: z.object({ dxf: z.string(), svg: z.string() }),
      sets: z.array(
        z.object({
          edges: z.array(z.string()),
          overhang_mm: z.number(),
          drawers: z.array(z.object({ drawer: z.string(), edge: z.string(), qty: z.number() })),
        }),
      ),
    }),
  ),
});

describe('overhang make', () => {
  test('writes the folder, says what it made and where, and shows the cautions', async () => {
    const out = join(folder, 'first');
    const { code, out: said, err } = await call('make', order, '--date', '2031-05-20', '--out', out);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(said).toContain('kitchen: 4 drawers on 2 lines, Face frame, undermount slides');
    expect(said).toMatch(/B1 +bottom fence +bottom 11\/16"/);
    expect(said).toMatch(/B2 +bottom fence +bottom 2"/);
    expect(said).toMatch(/S1 +side spacer +left or right 1 7\/16"/);
    expect(said).toContain(`files in ${out}`);
    expect(said).toContain('Never leave a laser running unattended');
    expect(filesIn(out)).toEqual(
      expect.arrayContaining(['fit.csv', 'manifest.json', 'parts.csv', 'read-first.txt', 'schedule.csv']),
    );
    expect(readdirSync(folder).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  test('lists every file of the folder in the manifest with its size and SHA-256', () => {
    const out = join(folder, 'first');
    const { files } = manifestSchema.parse(JSON.parse(read(join(out, 'manifest.json'))));
    expect(files.map(({ path }) => path).toSorted()).toEqual(
      filesIn(out).filter((name) => name !== 'manifest.json'),
    );
    for (const { path, size, sha256, report } of files) {
      const bytes = readFileSync(join(out, path));
      expect({ path, size, sha256 }).toEqual({
        path,
        size: bytes.length,
        sha256: createHash('sha256').update(bytes).digest('hex'),
      });
      // Requirement EXP: a report for each export, with no open contour on a cut layer.
      if (/\.(dxf|svg)$/.test(path))
        expect(report).toMatchObject({ unit: 'mm', open_contours_on_cut_layers: 0 });
    }
  });

  test('says for each part what it sets: edge, overhang in mm, drawers served', () => {
    const { parts } = manifestSchema.parse(JSON.parse(read(join(folder, 'first', 'manifest.json'))));
    const plate = parts.find(({ id }) => id === 'B2-plate');
    expect(plate?.sets).toEqual([
      { edges: ['bottom'], overhang_mm: 50.8, drawers: [{ drawer: 'B1 / bottom', edge: 'bottom', qty: 2 }] },
    ]);
    for (const { files } of parts) {
      expect(existsSync(join(folder, 'first', files.dxf))).toBe(true);
      expect(existsSync(join(folder, 'first', files.svg))).toBe(true);
    }
  });

  test('fit.csv has what was said of a row with it, of a drawer in a room too', async () => {
    const order = join(folder, 'wobble.csv');
    const rows = [',B1,top,1,inset,14 1/2,5,wobble', 'Hall,B2,top,1,inset,14 1/2,5,wobble', ''];
    writeFileSync(order, ['room,cabinet,drawer,qty,style,opening_w,opening_h,pull', ...rows].join('\n'));
    const out = join(folder, 'wobble');
    const { code } = await call('make', order, '--out', out, '--formats', 'none', '--paper', 'none');
    expect(code).toBe(0);
    const { data } = Papa.parse<Readonly<Record<string, string>>>(read(join(out, 'fit.csv')).trim(), {
      header: true,
    });
    expect(data.map(({ room, cabinet }) => [room, cabinet])).toEqual([
      ['', 'B1'],
      ['Hall', 'B2'],
    ]);
    for (const [index, { warnings }] of data.entries()) {
      expect(warnings).toContain(`Row ${index + 2}`);
      expect(warnings).toContain('“wobble”');
      expect(warnings).not.toContain(`Row ${3 - index}`);
    }
  });

  test('writes fit.csv and schedule.csv as their readers expect them', () => {
    const lines = (name: string) => read(join(folder, 'first', name)).split('\r\n');
    // The columns of the fit; those of the screws come after them, and the warnings last.
    const fit = lines('fit.csv').map((line) => line.split(','));
    expect(fit.map((cells) => cells.slice(0, 13).join(','))).toEqual([
      'room,cabinet,drawer,qty,style,overhang_left_mm,overhang_right_mm,overhang_top_mm,overhang_bottom_mm,front_w_mm,front_h_mm,box_w_mm,box_h_mm',
      ',B1,top,2,full overlay,36.5125,36.5125,42.8625,17.4625,520.7,174.625,447.675,114.3',
      ',B1,bottom,2,full overlay,36.5125,36.5125,44.45,50.8,520.7,330.2,447.675,234.95',
      '',
    ]);
    expect(fit.map((cells) => cells.at(-1))).toEqual(['warnings', '', '', '']);
    // Drill guides set no edge; which there are depends on the screws.
    expect(lines('schedule.csv').filter((line) => !line.includes('drill guide'))).toEqual([
      'room,cabinet,drawer,qty,style,edge,jig,kind,hand,overhang,overhang_mm,adjust_mm,adjust',
      ',B1,top,2,full overlay,bottom,B1,bottom fence,,"11/16""",17.4625,0,',
      ',B1,top,2,full overlay,left,S1,side spacer,,"1 7/16""",36.5125,0,',
      ',B1,bottom,2,full overlay,bottom,B2,bottom fence,,"2""",50.8,0,',
      ',B1,bottom,2,full overlay,left,S1,side spacer,,"1 7/16""",36.5125,0,',
      '',
    ]);
  });

  test('EXP: the same order and options give the same bytes', async () => {
    const again = join(folder, 'again');
    await call('make', order, '--date', '2031-05-20', '--out', again);
    const first = join(folder, 'first');
    expect(filesIn(again)).toEqual(filesIn(first));
    for (const name of filesIn(first)) {
      expect(readFileSync(join(again, name)).equals(readFileSync(join(first, name)))).toBe(true);
    }
  });

  test('takes the place of a folder that it wrote before, whole', async () => {
    const out = join(folder, 'replaced');
    await call('make', order, '--out', out);
    writeFileSync(join(out, 'svg', 'mine.svg'), 'mine');
    const refused = await call('make', order, '--jigs', 'corner', '--out', out);
    expect(refused).toMatchObject({ code: 2, out: '' });
    expect(refused.err).toContain(
      'files that this program did not write (svg/mine.svg), which would be lost',
    );
    rmSync(join(out, 'svg', 'mine.svg'));
    const { code } = await call('make', order, '--jigs', 'corner', '--out', out);
    expect(code).toBe(0);
    expect(filesIn(out).some((name) => name.includes('C1L-plate'))).toBe(true);
  });

  test('does not touch a folder that holds anything else', async () => {
    const out = join(folder, 'precious');
    mkdirSync(out);
    writeFileSync(join(out, 'letter.txt'), 'keep me');
    const { code, err } = await call('make', order, '--out', out);
    expect(code).toBe(2);
    expect(err).toContain('holds other files, which would be lost; name a new or empty folder');
    expect(filesIn(out)).toEqual(['letter.txt']);
  });

  test('writes nothing when the order has a fault, and leaves an older folder as it is', async () => {
    const out = join(folder, 'kept');
    await call('make', order, '--out', out);
    const before = filesIn(out).map((name) => [name, read(join(out, name))]);
    const faulty = join(folder, 'faulty.csv');
    writeFileSync(
      faulty,
      ORDER.replace('18,5 1/2', 'wide,5 1/2').replace('full overlay,18,10', 'flush,18,10'),
    );
    const { code, err, out: said } = await call('make', faulty, '--out', out);
    expect(code).toBe(1);
    expect(said).toBe('');
    expect(err).toMatch(/faulty\.csv: error: Row 2, opening_w/);
    expect(err).toMatch(/faulty\.csv: error: Row 3, style/);
    expect(err).toContain('2 errors, 0 warnings; nothing was written');
    expect(filesIn(out).map((name) => [name, read(join(out, name))])).toEqual(before);
    expect(readdirSync(folder).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  test('writes nothing when the fit has an error', async () => {
    const wide = join(folder, 'wide.csv');
    writeFileSync(
      wide,
      'cabinet,drawer,qty,style,opening_w,opening_h,box_w\nB1,one,1,full overlay,18,6,18\n',
    );
    const { code, err } = await call('make', wide, '--out', join(folder, 'never'));
    expect(code).toBe(1);
    expect(err).toContain('wide.csv: error: Drawer B1 / one, row 2: the box cannot enter its opening');
    expect(existsSync(join(folder, 'never'))).toBe(false);
  });

  test('reads bare numbers as millimetres with --units mm, and labels so', async () => {
    const metric = join(folder, 'metric.csv');
    writeFileSync(metric, 'cabinet;drawer;qty;style;opening_w;opening_h\nB1;one;1;full overlay;463,5;140\n');
    const { code, out } = await call(
      'make',
      metric,
      '--standard',
      'frameless-undermount',
      '--units',
      'mm',
      '--out',
      join(folder, 'metric'),
    );
    expect(code).toBe(0);
    expect(out).toMatch(/bottom [\d.]+ mm/);
  });

  test('DXF-3: the unit of a file is in its name, inches when the profile says so', async () => {
    const profile = z
      .looseObject({ dxf: z.looseObject({}) })
      .parse(JSON.parse(read(new URL('../../assets/machines/laser-6.json', import.meta.url).pathname)));
    const machine = join(folder, 'inch-laser.json');
    writeFileSync(machine, JSON.stringify({ ...profile, dxf: { ...profile.dxf, unit: 'in' } }));
    const out = join(folder, 'inches');
    const { code } = await call('make', order, '--machine', machine, '--out', out);
    expect(code).toBe(0);
    expect(readdirSync(join(out, 'dxf')).every((name) => name.endsWith('_in.dxf'))).toBe(true);
    expect(readdirSync(join(out, 'svg')).every((name) => name.endsWith('_mm.svg'))).toBe(true);
  });

  test('writes only what is chosen: one format, one list, the parts of two jigs', async () => {
    const out = join(folder, 'chosen');
    const { code, out: said } = await call(
      'make',
      order,
      '--formats',
      'dxf',
      '--lists',
      'parts',
      '--paper',
      'none',
      '--only-jigs',
      'S1, B2',
      '--out',
      out,
    );
    expect(code).toBe(0);
    const files = filesIn(out);
    expect(files).toEqual(
      expect.arrayContaining(['manifest.json', 'parts.csv', join('dxf', 'B2-plate_mm.dxf')]),
    );
    expect(
      files.filter((name) => !/^(manifest\.json|parts\.csv|dxf.(S1|B2)-[\w-]+_mm\.dxf)$/.test(name)),
    ).toEqual([]);
    expect(said).toMatch(/^2 jigs of \d+, /m);
    expect(said).toContain(`${files.length} files in ${out}\n`);
    const { left_out } = z
      .object({ left_out: z.object({ kinds: z.array(z.string()), jigs: z.array(z.string()) }) })
      .parse(JSON.parse(read(join(out, 'manifest.json'))));
    expect(left_out.kinds).toEqual([
      'svg',
      'fit',
      'schedule',
      'read-first',
      'templates',
      'instructions',
      'checklist',
      'calibration',
      'sheets',
      'coupon',
      'solids',
    ]);
    expect(left_out.jigs).toContain('B1');
    expect(left_out.jigs.filter((id) => ['S1', 'B2'].includes(id))).toEqual([]);
  });

  test('writes lists only with --formats none', async () => {
    const out = join(folder, 'lists');
    const { code } = await call('make', order, '--formats', 'none', '--paper', 'none', '--out', out);
    expect(code).toBe(0);
    expect(filesIn(out)).toEqual(['fit.csv', 'manifest.json', 'parts.csv', 'read-first.txt', 'schedule.csv']);
    expect(read(join(out, 'parts.csv'))).not.toMatch(/dxf\/|svg\//);
  });

  test('shares jigs with --jigs-share: fewer of them, and the schedule says what is left to adjust', async () => {
    const uneven = join(folder, 'uneven.csv');
    const rows = [18, 19, 20].map(
      (width, index) => `B${index},one,1,full overlay,${width},8,lap ${12 + index / 2} mm`,
    );
    writeFileSync(uneven, ['cabinet,drawer,qty,style,opening_w,opening_h,bottom', ...rows].join('\n'));
    const fences = async (...words: readonly string[]) => {
      const out = join(folder, `uneven-${words.join('')}`);
      const { code } = await call('make', uneven, '--formats', 'none', ...words, '--out', out);
      expect(code).toBe(0);
      const schedule = read(join(out, 'schedule.csv')).split('\r\n').slice(1, -1);
      const cells = schedule.map((row) => row.split(',')).filter((row) => row[5] === 'bottom');
      return { jigs: new Set(cells.map((row) => row[6])).size, left: cells.map((row) => Number(row.at(-2))) };
    };
    expect(await fences()).toEqual({ jigs: 3, left: [0, 0, 0] });
    const shared = await fences('--jigs-share', 'fewest');
    // The one in the middle serves all three with the least to adjust; it is rounded to the next 1/64 in.
    expect(shared.jigs).toBe(1);
    const [less = 0, middle = 0, more = 0] = shared.left.toSorted((a, b) => a - b);
    expect(Math.abs(middle)).toBeLessThan(25.4 / 64 / 2);
    expect([middle - less, more - middle].map((apart) => apart.toFixed(6))).toEqual(['0.500000', '0.500000']);
    const { code, err } = await call('make', uneven, '--jigs-share', 'some', '--out', join(folder, 'none'));
    expect(code).toBe(2);
    expect(err).toContain('--jigs-share is "some"; write each, fewest, or a whole number of jigs');
  });

  test('tells a long order’s progress', async () => {
    const rows = Array.from(
      { length: 12 },
      (_, index) => `B${index},one,1,full overlay,18,${8 + index},lap ${index + 1}/2`,
    );
    const long = join(folder, 'long.csv');
    writeFileSync(long, ['cabinet,drawer,qty,style,opening_w,opening_h,bottom', ...rows].join('\n'));
    const { err } = await call('make', long, '--out', join(folder, 'long'));
    expect(err).toMatch(/\d+ of \d+ parts written\n/);
  });
});
