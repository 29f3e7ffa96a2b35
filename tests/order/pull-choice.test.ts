import { describe, expect, test } from 'vitest';
import { parsePullChoice } from '../../core/order/pull-choice.ts';
import { readOrderCsv } from '../../core/order/read-csv.ts';
import type { PullChoice } from '../../core/order/types.ts';
import { readStandard } from '../rules/read-standard.ts';

const standard = readStandard('face-frame-undermount.json');

const parse = (text: string): PullChoice | string => {
  const read = parsePullChoice(text, standard.pulls);
  return read.ok ? read.choice : read.reason;
};

describe('parsePullChoice', () => {
  test.each<[string, PullChoice]>([
    ['bar 96 mm', { sort: 'bar', centers: 96 }],
    ['BAR 96mm', { sort: 'bar', centers: 96 }],
    ['cup 3 in', { sort: 'cup', centers: 76.2 }],
    ['cup 2½″', { sort: 'cup', centers: 63.5 }],
    ['bar 96,5 mm', { sort: 'bar', centers: 96.5 }],
    ['knob', { sort: 'knob' }],
    ['knob x2', { sort: 'knob', count: 2 }],
    ['bar x1', { sort: 'bar', count: 1 }],
    ['bar 128 mm x2', { sort: 'bar', centers: 128, count: 2 }],
    ['bar 128 mm X 2, brushed', { sort: 'bar', centers: 128, count: 2 }],
    ['bar; the old one, with 3 screws', { sort: 'bar' }],
    ['cup,black', { sort: 'cup' }],
  ])('reads %j', (text, choice) => {
    expect(parse(text)).toEqual(choice);
  });

  const SORTS = 'it begins with no sort of pull that the shop standard has; begin it with bar, cup, knob';
  test.each([
    ['finger groove', SORTS],
    ['knub', `${SORTS} (did you mean knob?)`],
    [', bar', SORTS],
    ['bar 96', 'the distance of its holes “96” has no unit; write one such as 96 mm or 3 in'],
    ['bar 3 1/2', 'the distance of its holes “3 1/2” has no unit; write one such as 96 mm or 3 in'],
    [
      'bar brushed',
      'the distance of its holes “brushed” is refused: words are not read; write a number with in, mm or cm, such as 1-7/16 in',
    ],
    ['bar 96 mm x3', 'a front has one or two pulls, not 3; write x1 or x2'],
    ['knob 64 mm', 'a knob has one hole and no distance “64 mm”; write knob, and a remark behind a comma'],
  ])('refuses %j', (text, reason) => {
    expect(parse(text)).toBe(reason);
  });

  test('of a standard without pulls refuses every text', () => {
    expect(parsePullChoice('bar', {})).toEqual({
      ok: false,
      reason: 'the shop standard has no pulls; leave this empty',
    });
  });
});

describe('readOrderCsv', () => {
  test('keeps a pull that it does not understand as text, with a warning', () => {
    const { value, findings } = readOrderCsv(
      'cabinet,drawer,qty,style,opening_w,opening_h,pull\nB1,top,1,inset,15,6,finger groove',
      { file: 'a.csv', name: 'quay', unit: 'in', standard },
    );
    expect(value.drawers[0]?.pull).toBe('finger groove');
    expect(value.drawers[0]).not.toHaveProperty('pullChoice');
    expect(findings.map(({ code, severity, at, message }) => [code, severity, at.column, message])).toEqual([
      [
        'order/pull-unknown',
        'warning',
        'pull',
        'Row 2, pull, reads “finger groove”: it begins with no sort of pull that the shop standard has; begin it with bar, cup, knob. Until then nothing is known of its holes.',
      ],
    ]);
  });

  test('refuses a species that the standard lacks, and says which is meant', () => {
    const { findings } = readOrderCsv(
      'cabinet,drawer,qty,style,opening_w,opening_h,species\nB1,top,1,inset,15,6,hard mapel',
      { file: 'a.csv', name: 'quay', unit: 'in', standard },
    );
    expect(findings).toHaveLength(1);
    expect(findings[0]?.code).toBe('order/species');
    expect(findings[0]?.message).toMatch(
      /^Row 2, species, reads “hard mapel”: the shop standard has no such species; write red alder, .* \(did you mean hard maple\?\)\.$/,
    );
  });
});
