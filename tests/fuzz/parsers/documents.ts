import * as fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { parseMachine } from '../../../core/machine/parse-machine.ts';
import { writeMachine } from '../../../core/machine/write-machine.ts';
import { readJson } from '../../../core/order/read-json.ts';
import { parseStrokeFont } from '../../../core/parts/parse-stroke-font.ts';
import { parseDraft } from '../../../core/project/parse-draft.ts';
import { parseProject } from '../../../core/project/parse-project.ts';
import { writeDraft } from '../../../core/project/write-draft.ts';
import { writeProject } from '../../../core/project/write-project.ts';
import { parseStandard } from '../../../core/rules/parse-standard.ts';
import { writeStandard } from '../../../core/rules/write-standard.ts';
import { readMachine } from '../../jigs/setups.ts';
import { anyJson, anyText, mangledJson, mangledText } from '../arbitraries.ts';
import { fuzzed, type Breaches, type Fuzzed } from '../fuzzed.ts';
import { findingBreaches, outcomeBreaches, roundTrip } from '../rules.ts';

const textOfFile = (path: string): string =>
  readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');
const jsonOfFile = (path: string): unknown => JSON.parse(textOfFile(path));

const STANDARDS = [
  'assets/standards/face-frame-undermount.json',
  'assets/standards/frameless-undermount.json',
  'tests/rules/samples/standard-1.json',
].map(jsonOfFile);
const MACHINES = [
  'assets/machines/laser-6.json',
  'assets/machines/router.json',
  'tests/machine/samples/machine-1.json',
].map(jsonOfFile);
const DRAWERS = [
  { cabinet: 'B1', drawer: 'top', qty: 1, style: 'inset', opening_w: '15-3/4', opening_h: '6 in' },
  {
    cabinet: 'B1',
    drawer: 'low',
    qty: '1',
    style: 'inset',
    opening_w: 15.75,
    opening_h: '10',
    pull: 'bar 96 mm',
  },
];
const PROJECTS = [
  jsonOfFile('tests/project/samples/project-1.json'),
  {
    format: 'overhang-project',
    version: 2,
    order: { name: 'quay', date: '2031-05-20', unit: 'in', drawers: DRAWERS },
    standard: STANDARDS[0],
    machine: MACHINES[1],
    jigs: 'corner',
    sharing: 'fewest',
  },
];

const defaults = { machine: readMachine('router'), registration: 'edge' } as const;

/** A document of its JSON value, mangled. A text of the corpus is read as JSON first, as the program does. */
const documents = (
  name: string,
  sources: readonly unknown[],
  check: (json: unknown, given: string) => Breaches,
  more: { readonly mayThrow?: (problem: unknown) => boolean; readonly weight?: number } = {},
): Fuzzed =>
  fuzzed<unknown>(name, {
    inputs: fc.oneof({ weight: 9, arbitrary: mangledJson(sources) }, { weight: 1, arbitrary: anyJson }),
    ofText: (text) => readJson(text, 'a.json').value,
    weight: 0.5,
    check: (json) => check(json, JSON.stringify(json) ?? ''),
    ...more,
  });

export const DOCUMENT_PARSERS: readonly Fuzzed[] = [
  fuzzed<string>('JSON text', {
    inputs: fc.oneof(
      mangledText(PROJECTS.concat(MACHINES).map((json) => JSON.stringify(json, undefined, 1))),
      anyText,
      fc.json(),
    ),
    ofText: (text) => text,
    check(text) {
      const { value, findings } = readJson(text, 'a.json');
      const isJson = parses(text);
      // What the language's own reader refuses is refused; what it takes may have a name twice or be too deep.
      const refused = findings.length > 0;
      return [
        ...findingBreaches(findings, text, 'a.json'),
        ...(refused === (value === undefined) ? [] : ['a value and a fault']),
        ...(isJson || refused ? [] : ['took what is no JSON']),
        ...(isJson &&
        refused &&
        !/stands twice|deep|digits or more|more than \d+ values/.test(findings[0]?.message ?? '')
          ? [`refused JSON: ${findings[0]?.message}`]
          : []),
      ];
    },
  }),
  documents('shop standard', STANDARDS, (json, given) => {
    const read = parseStandard(json, 'a.json');
    return [
      ...outcomeBreaches(read, given, 'a.json'),
      ...(read.value === null
        ? []
        : roundTrip(
            'standard',
            read.value,
            parseStandard(JSON.parse(writeStandard(read.value)), 'a.json').value,
          )),
    ];
  }),
  documents('machine profile', MACHINES, (json, given) => {
    const read = parseMachine(json, 'a.json');
    return [
      ...outcomeBreaches(read, given, 'a.json'),
      ...(read.value === null
        ? []
        : roundTrip(
            'machine',
            read.value,
            parseMachine(JSON.parse(writeMachine(read.value)), 'a.json').value,
          )),
    ];
  }),
  documents('project to make', PROJECTS, (json, given) => {
    const read = parseProject(json, 'a.json');
    return [
      ...outcomeBreaches(read, given, 'a.json'),
      ...(read.value === null
        ? []
        : roundTrip(
            'project',
            read.value,
            parseProject(JSON.parse(writeProject(read.value)), 'a.json').value,
          )),
    ];
  }),
  documents('project to work on', PROJECTS, (json, given) => {
    const read = parseDraft(json, 'a.json', defaults);
    return [
      ...outcomeBreaches(read, given, 'a.json'),
      ...(read.value === null
        ? []
        : roundTrip(
            'draft',
            read.value,
            parseDraft(JSON.parse(writeDraft(read.value)), 'a.json', defaults).value,
          )),
    ];
  }),
  documents(
    'stroke font',
    [jsonOfFile('assets/stroke-font/sans.json')],
    (json) => {
      const font = parseStrokeFont(json);
      return Object.values(font.glyphs).every(({ advance }) => advance > 0)
        ? []
        : ['a glyph without advance'];
    },
    {
      // It ships with the program, and another shape is a programmer's error.
      mayThrow: (problem) => problem instanceof z.ZodError,
      weight: 0.02,
    },
  ),
];

function parses(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
