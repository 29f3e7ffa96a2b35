import type { Finding, Outcome, Place } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import { comparable } from '../order/cabinets.ts';
import { quoteText } from '../order/quote-text.ts';
import type { Drawer, Edge, LengthUnit } from '../order/types.ts';
import { formatLength } from '../units/format-length.ts';
import { overlayOf, resolveCondition } from './overlay.ts';
import type { ResolvedEdge, ResolvedRules } from './resolved.ts';
import { situationOf } from './situation.ts';
import type { CabinetKind, OverlayStyle, ShopStandard, SlideRule } from './types.ts';

/**
 * What the shop standard and the order's own edge cells say of one drawer, in a cabinet of so many
 * columns. The value is null when the drawer names what the standard does not have.
 *
 * @example resolveRules(drawer, standard, 2).value?.edges.left.overlay // 31.75
 */
export function resolveRules(
  drawer: Drawer,
  standard: ShopStandard,
  columns: number,
): Outcome<ResolvedRules | null> {
  const at: Place = {
    ...(drawer.row > 0 ? { row: drawer.row } : {}),
    drawer: `${drawer.cabinet} / ${drawer.drawer}`,
  };
  const style = standard.styles.find((known) => comparable(known.name) === comparable(drawer.style));
  const kind = kindOf(drawer, standard);
  const slideName = kind?.slide ?? standard.slide;
  const slide = Object.hasOwn(standard.slides, slideName) ? standard.slides[slideName] : undefined;
  const findings: Finding[] = [];
  if (style === undefined) findings.push(unknown('style', drawer.style, standard, at));
  if (kind === undefined) findings.push(unknown('cabinet kind', drawer.cabinetKind ?? '', standard, at));
  if (slide === undefined) findings.push(unknown('slide', slideName, standard, at));
  if (style === undefined || kind === undefined || slide === undefined) return { value: null, findings };
  return combine(drawer, standard, { style, kind, slide, slideName, columns, at });
}

interface Found {
  readonly style: OverlayStyle;
  readonly kind: CabinetKind;
  readonly slide: SlideRule;
  readonly slideName: string;
  readonly columns: number;
  readonly at: Place;
}

function combine(drawer: Drawer, standard: ShopStandard, found: Found): Outcome<ResolvedRules> {
  const { style, slide, slideName, at } = found;
  const members = { ...standard.members, ...found.kind.members };
  const findings: Finding[] = [];
  const edge = (name: Edge): ResolvedEdge => {
    const situation = situationOf(name, drawer, found.columns);
    const own = drawer.edges[name];
    const rule = style.edges[name][situation];
    const condition = resolveCondition(own ?? rule.value, members);
    const overlay = overlayOf(condition);
    if (condition.kind === 'cover' && overlay < 0)
      findings.push(revealTooWide(name, condition, standard.unit, at));
    const source = own === undefined ? rule.source : orderSource(drawer);
    return { condition, overlay, source, situation };
  };
  const edges = { left: edge('left'), right: edge('right'), top: edge('top'), bottom: edge('bottom') };
  return {
    value: {
      edges,
      startLow: style.startLow[edges.bottom.situation],
      runningClearance: slide.runningClearance,
      lift: slide.lift,
      topClearance: slide.topClearance,
      sideMember: slide.sideMember,
      widthTolerance: slide.widthTolerance,
      backBevel: style.backBevel,
      slideName,
      members,
    },
    findings,
  };
}

const orderSource = (drawer: Drawer): string => (drawer.row > 0 ? `order, row ${drawer.row}` : 'order');

function revealTooWide(
  edge: Edge,
  { member, reveal }: { readonly member: number; readonly reveal: number },
  unit: LengthUnit,
  at: Place,
): Finding {
  const message = `Drawer ${at.drawer ?? ''}: its ${edge} edge covers a member of ${formatLength(member, unit)} but for a reveal of ${formatLength(reveal, unit)}, which is more than the member; write a smaller reveal, or inset and a gap.`;
  return error('rules/reveal-over-member', message, at, { edge, member, reveal });
}

const PLAIN: CabinetKind = { members: {} };

function kindOf(drawer: Drawer, standard: ShopStandard): CabinetKind | undefined {
  const { cabinetKind } = drawer;
  if (cabinetKind === undefined) return PLAIN;
  const kinds = Object.entries(standard.cabinetKinds);
  return kinds.find(([name]) => comparable(name) === comparable(cabinetKind))?.[1];
}

function unknown(what: string, name: string, standard: ShopStandard, at: Place): Finding {
  const known = {
    style: standard.styles.map((style) => style.name),
    'cabinet kind': Object.keys(standard.cabinetKinds),
    slide: Object.keys(standard.slides),
  }[what];
  const message = `Drawer ${at.drawer ?? ''} has the ${what} ${quoteText(name)}, which the shop standard ${quoteText(standard.name)} does not have; it has ${known?.join(', ') || 'none'}.`;
  return error(`rules/${what.replace(' ', '-')}-unknown`, message, at, { name });
}
