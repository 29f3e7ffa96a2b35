import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../..');

/** Which rooms a room may import from, besides itself and npm packages. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  core: [],
  shared: ['core', 'assets'],
  electron: ['core', 'shared', 'package.json'],
  renderer: ['core', 'shared', 'assets'],
};

/** The stages of the chain; each may import those before it, and the grounds below all of them. */
const GROUNDS = new Set(['cautions', 'collections', 'units', 'geometry', 'findings']);
const STAGES = [
  'order',
  'rules',
  'machine',
  'fit',
  'fastening',
  'jigs',
  'parts',
  'sheets',
  // A test piece for a machine, made as parts are.
  'calibration',
  'files',
  // Made of the chain: the document in work, pictures of it, the session that keeps both up to date.
  'project',
  'elevation',
  'scene',
  'mesh',
  'screw-section',
  'gap-view',
  'session',
];

/** npm packages that only their own corner of core may import. */
const CORNERS: Readonly<Record<string, readonly string[]>> = {
  makerjs: ['core/geometry/', 'core/files/'],
  'clipper2-ts': ['core/geometry/'],
};

interface Import {
  readonly file: string;
  readonly target: string;
}

const sources = (folder: string): readonly string[] =>
  readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return sources(path);
    return /\.(ts|tsx|mts)$/.test(name) ? [path] : [];
  });

/** Static, re-exporting and dynamic imports, of types too, with relative targets made relative to the root. */
function importsOf(path: string): readonly Import[] {
  const text = readFileSync(path, 'utf8');
  const file = relative(ROOT, path);
  return [...text.matchAll(/(?:\bfrom\s*|\bimport\s*\(?\s*)['"]([^'"]+)['"]/g)].map(([, target = '']) => ({
    file,
    target: target.startsWith('.') ? relative(ROOT, resolve(dirname(path), target)) : target,
  }));
}

const isRelative = ({ target }: Import, rooms: readonly string[]) =>
  rooms.some((room) => target === room || target.startsWith(`${room}/`));

const ROOMS = Object.keys(MAY_IMPORT);
const inRoom = (room: string): readonly Import[] => sources(join(ROOT, room)).flatMap(importsOf);
const ALL_PLACES = [...ROOMS, 'assets', 'tests', 'package.json', 'node_modules'];

describe('imports between rooms', () => {
  test.for(ROOMS)('%s imports only what it may, types included', (room) => {
    const allowed = [room, ...(MAY_IMPORT[room] ?? [])];
    const forbidden = inRoom(room).filter(
      (line) => isRelative(line, ALL_PLACES) && !isRelative(line, allowed),
    );
    expect(forbidden).toEqual([]);
  });

  test('core imports no Node module and nothing of a browser or of the desktop shell', () => {
    const forbidden = inRoom('core').filter(({ target }) =>
      /^(node:|fs$|path$|electron|react|three|@react-three)/.test(target),
    );
    expect(forbidden).toEqual([]);
  });

  test('core imports makerjs and the clipper only in their own corners', () => {
    const strays = inRoom('core').filter(({ file, target }) => {
      const corners = CORNERS[target];
      return corners !== undefined && !corners.some((corner) => file.startsWith(corner));
    });
    expect(strays).toEqual([]);
  });

  test('a stage of core imports only stages before it and the grounds', () => {
    const folderOf = (path: string) => (path.startsWith('core/') ? (path.split('/')[1] ?? '') : '');
    const forward = inRoom('core').filter(({ file, target }) => {
      const [from, to] = [folderOf(file), folderOf(target)];
      if (to === '' || to === from || !file.includes('/', 'core/'.length)) return false;
      if (GROUNDS.has(from)) return !GROUNDS.has(to);
      if (GROUNDS.has(to)) return false;
      // The pipeline and what it writes stand above the chain: only a session may run them.
      if (to.endsWith('.ts')) return from !== 'session';
      return !STAGES.includes(to) || STAGES.indexOf(to) > STAGES.indexOf(from);
    });
    expect(forward).toEqual([]);
  });
});
