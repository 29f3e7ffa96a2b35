import { describe, expect, test } from 'vitest';
import {
  checkChoice,
  EVERYTHING,
  includesJig,
  leftOut,
  type OutputChoice,
} from '../../core/files/output-choice.ts';
import { OUTPUT_GROUPS, OUTPUT_KINDS } from '../../core/files/output-kinds.ts';

const JIGS = ['B1', 'B2', 'S1'];

describe('OUTPUT_KINDS', () => {
  test('have an id each of a form that the command line takes, and a group that it has an option for', () => {
    const ids: readonly string[] = OUTPUT_KINDS.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => !/^[a-z]+(-[a-z]+)*$/.test(id) || id === 'none')).toEqual([]);
    const groups = new Set<string>(OUTPUT_GROUPS.map(({ id }) => id));
    expect(OUTPUT_KINDS.filter(({ group }) => !groups.has(group))).toEqual([]);
  });
});

describe('checkChoice', () => {
  test('takes everything, and any kind alone', () => {
    expect(checkChoice(EVERYTHING, JIGS)).toEqual([]);
    for (const { id } of OUTPUT_KINDS)
      expect(checkChoice({ ...EVERYTHING, kinds: [id], jigs: ['S1'] }, JIGS)).toEqual([]);
  });

  test('refuses no kind, no jig, and each jig that there is not once, and says what there is', () => {
    const messages = (jigs: 'all' | readonly string[]) =>
      checkChoice({ ...EVERYTHING, kinds: [], jigs }, JIGS).map(({ code, message }) => [code, message]);
    const none = [
      'files/no-kind',
      `No file is chosen; choose at least one of ${OUTPUT_KINDS.map(({ label }) => label).join(', ')}.`,
    ];
    expect(messages('all')).toEqual([none]);
    expect(messages([])).toEqual([
      none,
      ['files/no-jig', 'No jig is chosen; choose at least one, from B1 to S1.'],
    ]);
    expect(messages(['B1', 'X9', 'X9'])).toEqual([
      none,
      ['files/unknown-jig', 'This order has no jig "X9"; its jigs are B1, B2, S1.'],
    ]);
  });
});

describe('checkChoice of paper', () => {
  test('refuses a printer factor that no paper can make good, only where something is printed', () => {
    const paper = { ...EVERYTHING.paper, factors: { x: 1.2, y: 1 } };
    const codes = (kinds: OutputChoice['kinds']) =>
      checkChoice({ ...EVERYTHING, kinds, paper }, JIGS).map(({ code }) => code);
    expect(codes(['templates'])).toEqual(['paper/factor']);
    expect(codes(['dxf'])).toEqual([]);
  });
});

describe('leftOut', () => {
  test('names what is not chosen, in the order of the folder and of the jigs', () => {
    expect(leftOut(EVERYTHING, JIGS)).toEqual({ kinds: [], jigs: [] });
    const choice = { ...EVERYTHING, kinds: ['parts', 'dxf'] as const, jigs: ['B2'] };
    expect(leftOut(choice, JIGS)).toEqual({
      kinds: OUTPUT_KINDS.map(({ id }) => id).filter((id) => id !== 'parts' && id !== 'dxf'),
      jigs: ['B1', 'S1'],
    });
    expect(JIGS.filter((id) => includesJig(choice, id))).toEqual(['B2']);
  });
});
