import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import type { DocumentPlace } from '../order/field-findings.ts';
import { comparable } from '../order/cabinets.ts';
import { quoteText } from '../order/quote-text.ts';
import { EDGES, MEMBER_NAMES, type MemberName } from '../order/types.ts';
import { overlayOf, resolveCondition } from './overlay.ts';
import type { ShopStandard, SourcedLength } from './types.ts';

/** What must hold between the values of a shop standard, each fault with the path of its field. */
export function checkStandard(standard: ShopStandard, place: DocumentPlace): readonly Finding[] {
  const { file, within = [] } = place;
  const fault = (code: string, path: string, what: string): Finding => {
    const field = [...within, path].join('.');
    return error(`rules/${code}`, `Field ${field}: ${what}.`, { file, field });
  };
  return [
    ...checkNames(standard, fault),
    ...checkSlides(standard, fault),
    ...checkMembers(standard, fault),
    ...checkReveals(standard, fault),
  ];
}

type Fault = (code: string, field: string, what: string) => Finding;

function checkNames(standard: ShopStandard, fault: Fault): readonly Finding[] {
  const lists = {
    styles: standard.styles.map((style) => style.name),
    slides: Object.keys(standard.slides),
    cabinetKinds: Object.keys(standard.cabinetKinds),
  };
  const findings = Object.entries(lists).flatMap(([list, names]) =>
    names.flatMap((name, index) => {
      const first = names.findIndex((other) => comparable(other) === comparable(name));
      const field = `${list}.${name}`;
      if (first < index) {
        return [
          fault(
            'name-twice',
            field,
            `${quoteText(names[first] ?? '')} is the same name; names differ in more than their case`,
          ),
        ];
      }
      return name === name.trim()
        ? []
        : [fault('name-blanks', field, 'the name begins or ends with a blank; take it out')];
    }),
  );
  if (standard.styles.length > 0) return findings;
  return [...findings, fault('no-style', 'styles', 'the list is empty; write one style at least')];
}

function checkSlides(standard: ShopStandard, fault: Fault): readonly Finding[] {
  const known = Object.keys(standard.slides);
  const named = [
    { field: 'slide', slide: standard.slide },
    ...Object.entries(standard.cabinetKinds).map(([kind, { slide }]) => ({
      field: `cabinetKinds.${kind}.slide`,
      slide,
    })),
  ];
  return named.flatMap(({ field, slide }) =>
    slide === undefined || known.includes(slide)
      ? []
      : [
          fault(
            'slide-unknown',
            field,
            `there is no slide ${quoteText(slide)}; write one of ${known.join(', ') || 'the slides, of which there are none'}`,
          ),
        ],
  );
}

/** Between frameless fronts there may be a joint without a rail or panel. */
const MAY_BE_ZERO: ReadonlySet<MemberName> = new Set(['shared-stile', 'mid-rail']);

function checkMembers(standard: ShopStandard, fault: Fault): readonly Finding[] {
  const kinds = Object.entries(standard.cabinetKinds).map(
    ([kind, { members }]) => [`cabinetKinds.${kind}.members`, members] as const,
  );
  return [['members', standard.members] as const, ...kinds].flatMap(([field, members]) =>
    MEMBER_NAMES.flatMap((name) => {
      const member: SourcedLength | undefined = members[name];
      if (member === undefined || member.value > 0) return [];
      if (standard.construction === 'frameless' && MAY_BE_ZERO.has(name)) return [];
      const what = 'the width is 0; only the shared-stile and mid-rail of a frameless standard may be 0';
      return [fault('member-zero', `${field}.${name}`, what)];
    }),
  );
}

function checkReveals(standard: ShopStandard, fault: Fault): readonly Finding[] {
  return standard.styles.flatMap((style) =>
    EDGES.flatMap((edge) =>
      (['outer', 'shared'] as const).flatMap((situation) => {
        const condition = resolveCondition(style.edges[edge][situation].value, standard.members);
        if (condition.kind !== 'cover' || overlayOf(condition) >= 0) return [];
        const field = `styles.${style.name}.edges.${edge}.${situation}`;
        return [
          fault('reveal-over-member', field, 'the reveal is wider than the member; write a smaller one'),
        ];
      }),
    ),
  );
}
