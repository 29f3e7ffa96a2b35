import { readFileSync } from 'node:fs';
import { relative, resolve } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import type { Plugin } from 'vite';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { FIRST_DOCUMENTS } from '../store/first-documents.ts';
import { readDemoRows } from '../store/read-demo-rows.ts';

const ROOT = resolve(import.meta.dirname, '../..');

/** Modules of one constant, and what it comes to. */
const CONSTANTS: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  'renderer/store/first-documents.ts': { FIRST_DOCUMENTS },
  'renderer/store/demo-rows.ts': {
    DEMO_ROWS: readDemoRows(readFileSync(resolve(ROOT, 'assets/orders/harbor-library.csv'), 'utf8')),
  },
  'shared/stroke-font.ts': { STROKE_FONT },
};

/** Reads what the program begins with while the page is built, so that no page has to. */
export const readConstants = (): Plugin => ({
  name: 'read-constants',
  enforce: 'pre',
  load(id) {
    const name = relative(ROOT, id).replaceAll('\\', '/');
    const constants = Object.hasOwn(CONSTANTS, name) ? CONSTANTS[name] : undefined;
    if (constants === undefined) return null;
    return Object.entries(constants)
      .map(([constant, value]) => {
        const text = JSON.stringify(value);
        if (!isDeepStrictEqual(JSON.parse(text), value)) throw new Error(`${name} cannot be written as JSON`);
        return `export const ${constant} = JSON.parse(${JSON.stringify(text)});`;
      })
      .join('\n');
  },
});
