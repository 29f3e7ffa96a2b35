import * as fc from 'fast-check';
import { comparable } from '../../core/order/cabinets.ts';
import type { OrderVocabulary } from '../../core/order/read-csv.ts';
import {
  MEMBER_NAMES,
  type Drawer,
  type EdgeCondition,
  type FrontConstruction,
  type Order,
  type Position,
  type PullChoice,
} from '../../core/order/types.ts';
import { writeLength } from '../../core/units/write-length.ts';

/** mm above 0, in fractions of an inch, in tenths of a millimetre, or of any digits. */
export const anyLength = fc.oneof(
  fc.integer({ min: 1, max: 50_000 }).map((parts) => (parts / 128) * 25.4),
  fc.integer({ min: 1, max: 90_000 }).map((parts) => parts / 10),
  fc.double({ min: 0.001, max: 9000, noNaN: true }),
);

const lengthOrZero = fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 4, arbitrary: anyLength });

const member = fc.oneof(anyLength, fc.constantFrom(...MEMBER_NAMES));

/** Every edge condition that can be written: a reveal is no wider than a member given as a number. */
export const anyCondition: fc.Arbitrary<EdgeCondition> = fc.oneof(
  lengthOrZero.map((gap): EdgeCondition => ({ kind: 'inset', gap })),
  lengthOrZero.map((overlay): EdgeCondition => ({ kind: 'lap', overlay })),
  fc
    .record({ kind: fc.constant('cover' as const), member, reveal: lengthOrZero })
    .filter((cover) => typeof cover.member !== 'number' || cover.reveal <= cover.member),
  fc.record({
    kind: fc.constant('share' as const),
    member: fc.oneof(member, fc.constant(0)),
    gap: lengthOrZero,
  }),
  fc.record({
    kind: fc.constant('share' as const),
    member,
    gap: lengthOrZero,
    neighborLap: fc.oneof(
      lengthOrZero,
      anyLength.map((mm) => -mm),
    ),
  }),
);

/** Names as people may give them: quotation marks, commas, semicolons and accents, but no blanks around. */
const anyName = fc
  .oneof(
    fc.string({ unit: fc.constantFrom(...Array.from('AbcZ019 ,;"\'=@/-é½')), minLength: 1, maxLength: 12 }),
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }),
  )
  .map((text) => text.trim())
  .filter(
    (text) => text !== '' && Array.from(text).length <= 80 && !/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\ufffd]/u.test(text),
  );

const anyNote = fc.array(anyName, { minLength: 1, maxLength: 3 }).map((lines) => lines.join('\n'));

const profile = fc.record({ thinnest: anyLength }, { requiredKeys: [] });

export const anyFront: fc.Arbitrary<FrontConstruction> = fc.oneof(
  profile.map((own) => ({ kind: 'slab' as const, ...own })),
  fc
    .record(
      {
        memberWidth: anyLength,
        railWidth: anyLength,
        joint: fc.constantFrom('cope' as const, 'mitre' as const),
      },
      { requiredKeys: ['memberWidth'] },
    )
    .chain((frame) => profile.map((own) => ({ kind: 'five-piece' as const, ...frame, ...own }))),
);

type Pull = Pick<Drawer, 'pull' | 'pullChoice'>;

/** A pull of the standard, in words that say all that is chosen, with or without a remark. */
function anyPull(pulls: OrderVocabulary['pulls']): fc.Arbitrary<Pull> {
  const sorts = Object.keys(pulls);
  if (sorts.length === 0) return fc.constant({});
  const choice = fc
    .record(
      { sort: fc.constantFrom(...sorts), centers: anyLength, count: fc.constantFrom(1 as const, 2 as const) },
      { requiredKeys: ['sort'] },
    )
    .map(({ centers, ...own }): PullChoice =>
      centers === undefined || pulls[own.sort]?.holes === 1 ? own : { ...own, centers },
    );
  const remark = fc.constantFrom('', ', brushed', '; by the owner');
  const told = fc.tuple(choice, remark).map(([pullChoice, after]): Pull => {
    const { sort, centers, count } = pullChoice;
    const words = [
      sort,
      ...(centers === undefined ? [] : [writeLength(centers, 'in')]),
      ...(count === undefined ? [] : [`x${count}`]),
    ];
    return { pull: `${words.join(' ')}${after}`, pullChoice };
  });
  return fc.oneof(fc.constant({}), told);
}

/** What the fields of a drawer may name. */
export type Vocabulary = Pick<OrderVocabulary, 'pulls'> & {
  readonly styles: readonly string[];
  readonly species: readonly string[];
};

const anyFields = ({ styles, species, pulls }: Vocabulary) =>
  fc.tuple(anySizes(styles, species), anyPull(pulls)).map(([own, pull]) => ({ ...own, ...pull }));

const anySizes = (styles: readonly string[], species: readonly string[]) =>
  fc.record(
    {
      style: fc.constantFrom(...styles),
      openingW: anyLength,
      openingH: anyLength,
      edges: fc.record(
        { left: anyCondition, right: anyCondition, top: anyCondition, bottom: anyCondition },
        { requiredKeys: [] },
      ),
      frontW: anyLength,
      frontH: anyLength,
      boxW: anyLength,
      boxH: anyLength,
      boxD: anyLength,
      front: anyFront,
      ...(species.length === 0 ? {} : { species: fc.constantFrom(...species) }),
      frontThickness: anyLength,
      boxSide: anyLength,
      boxFront: anyLength,
      note: anyNote,
    },
    { requiredKeys: ['style', 'openingW', 'openingH', 'edges', 'front'] },
  );

/** Positions that a column of so many drawers may have: as they come, or with parts of the stack elsewhere. */
const anyPositions = (count: number): fc.Arbitrary<readonly Position[]> =>
  fc.record({ top: fc.boolean(), bottom: fc.boolean() }).map(({ top, bottom }) =>
    Array.from({ length: count }, (_, index): Position => {
      if (bottom && index === count - 1) return 'bottom';
      return top && index === 0 ? 'top' : 'middle';
    }),
  );

/** What the rows of a cabinet have in common. */
const anyHead = (kinds: readonly string[]) => {
  const plain = { room: anyName, cabinet: anyName, qty: fc.integer({ min: 1, max: 10_000 }) };
  const withoutKind = fc.record(plain, { requiredKeys: ['cabinet', 'qty'] });
  if (kinds.length === 0) return withoutKind;
  const withKind = fc.record(
    { ...plain, cabinetKind: fc.constantFrom(...kinds) },
    { requiredKeys: ['cabinet', 'qty'] },
  );
  return fc.oneof(withoutKind, withKind);
};

type LooseDrawer = Omit<Drawer, 'row'>;

/** A column of a cabinet, its drawers from top to bottom. */
const anyStack = (terms: Vocabulary) =>
  fc.integer({ min: 1, max: 3 }).chain((count) =>
    fc.record({
      positions: anyPositions(count),
      fields: fc.array(anyFields(terms), { minLength: count, maxLength: count }),
      names: fc.array(anyName, { minLength: count, maxLength: count }),
    }),
  );

const anyCabinet = (terms: Vocabulary, kinds: readonly string[]): fc.Arbitrary<readonly LooseDrawer[]> =>
  fc
    .record({ head: anyHead(kinds), stacks: fc.array(anyStack(terms), { minLength: 1, maxLength: 3 }) })
    .map(({ head, stacks }) =>
      stacks.flatMap(({ positions, fields, names }, column) =>
        fields.map((own, index) =>
          Object.assign({}, head, own, {
            column: column + 1,
            position: positions[index] ?? 'middle',
            first: index === 0,
            last: index === fields.length - 1,
            // Two drawers of one cabinet never have the same name.
            drawer: `${names[index] ?? ''} ${column + 1}.${index + 1}`,
          }),
        ),
      ),
    );

/** Orders that a shop could have, with rows from 2 on as a CSV file has them. */
export const anyOrder = (
  styles: readonly string[],
  kinds: readonly string[],
  { species = [], pulls = {} }: Partial<Omit<Vocabulary, 'styles'>> = {},
): fc.Arbitrary<Order> =>
  fc
    .record({
      head: fc.record(
        {
          name: anyName,
          date: fc.constantFrom('2031-05-20', '2032-02-29'),
          unit: fc.constantFrom('in' as const, 'mm' as const),
        },
        { requiredKeys: ['name', 'unit'] },
      ),
      cabinets: fc.uniqueArray(anyCabinet({ styles, species, pulls }, kinds), {
        minLength: 1,
        maxLength: 4,
        selector: ([first]) => comparable(JSON.stringify([first?.room ?? '', first?.cabinet])),
      }),
    })
    .map(({ head, cabinets }) => {
      const drawers = cabinets.flat().map((drawer, index) => Object.assign({ row: index + 2 }, drawer));
      return Object.assign({}, head, { drawers });
    });
