import { writeEdgeCondition } from '../order/edge-condition.ts';
import { MEMBER_NAMES } from '../order/types.ts';
import { plainDecimal } from '../units/plain-decimal.ts';
import { writeLength } from '../units/write-length.ts';
import { STANDARD_FORMAT, STANDARD_VERSION } from './standard-schema.ts';
import type {
  EdgeRule,
  OverlayStyle,
  ShopStandard,
  Sourced,
  SourcedLength,
  Tolerance,
  ToleranceSource,
} from './types.ts';

/** Writes a shop standard as JSON text that `parseStandard` reads back the same, ending in a line break. */
export const writeStandard = (standard: ShopStandard): string =>
  `${JSON.stringify(standardDocument(standard), undefined, 2)}\n`;

/** A shop standard as the JSON document that `parseStandard` reads. */
export function standardDocument(standard: ShopStandard): object {
  const { unit } = standard;
  const length = (from: SourcedLength) => ({ value: writeLength(from.value, unit), source: from.source });
  // Fields are named one by one so that their order in the file does not hang on how a standard was made.
  const lengths = <Name extends string>(
    from: Readonly<Partial<Record<Name, SourcedLength>>>,
    names: readonly Name[],
  ): Readonly<Record<string, object>> =>
    Object.fromEntries(
      names.flatMap((name) => {
        const own = from[name];
        return own === undefined ? [] : [[name, length(own)]];
      }),
    );
  const edge = ({ outer, shared }: EdgeRule) => ({
    outer: { value: writeEdgeCondition(outer.value, unit), source: outer.source },
    shared: { value: writeEdgeCondition(shared.value, unit), source: shared.source },
  });
  const style = ({ name, edges, startLow, backBevel }: OverlayStyle) => ({
    name,
    edges: {
      left: edge(edges.left),
      right: edge(edges.right),
      top: edge(edges.top),
      bottom: edge(edges.bottom),
    },
    startLow: lengths(startLow, ['outer', 'shared']),
    backBevel: angle(backBevel),
  });
  const tolerance = ({ value, distribution, source }: Tolerance) => ({
    value: writeLength(value, unit),
    distribution,
    source,
  });
  return {
    format: STANDARD_FORMAT,
    version: STANDARD_VERSION,
    name: standard.name,
    note: standard.note,
    unit,
    construction: standard.construction,
    members: lengths(standard.members, MEMBER_NAMES),
    slides: mapValues(standard.slides, (slide) => lengths(slide, SLIDE_FIELDS)),
    slide: standard.slide,
    styles: standard.styles.map(style),
    cabinetKinds: mapValues(standard.cabinetKinds, ({ members, slide }) => ({
      members: lengths(members, MEMBER_NAMES),
      ...(slide === undefined ? {} : { slide }),
    })),
    front: lengths(standard.front, ['thickness']),
    box: lengths(standard.box, ['sideThickness', 'frontThickness']),
    limits: lengths(standard.limits, ['smallestGap', 'sizeDifference']),
    tolerances: Object.fromEntries(TOLERANCES.map((name) => [name, tolerance(standard.tolerances[name])])),
  };
}

const SLIDE_FIELDS = ['runningClearance', 'lift', 'topClearance', 'sideMember', 'widthTolerance'] as const;

const TOLERANCES: readonly ToleranceSource[] = ['opening', 'box', 'front', 'jig', 'seating', 'slide'];

const angle = ({ value, source }: Sourced<number>) => ({ value: `${plainDecimal(value)} deg`, source });

const mapValues = <From, To>(
  from: Readonly<Record<string, From>>,
  change: (value: From) => To,
): Readonly<Record<string, To>> =>
  Object.fromEntries(Object.entries(from).map(([key, value]) => [key, change(value)]));
