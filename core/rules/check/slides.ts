import type { Finding } from '../../findings/finding.ts';
import { quoteText } from '../../order/quote-text.ts';
import type { ShopStandard } from '../types.ts';
import type { Fault } from './fault.ts';

/** Slides that are named are there, and their adjusters reach from below 0 to above it. */
export const checkSlides = (standard: ShopStandard, fault: Fault): readonly Finding[] => [
  ...checkNamed(standard, fault),
  ...checkAdjusters(standard, fault),
];

function checkNamed(standard: ShopStandard, fault: Fault): readonly Finding[] {
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

const ADJUSTERS = ['height', 'side', 'depth', 'tilt'] as const;

const checkAdjusters = ({ slides }: ShopStandard, fault: Fault): readonly Finding[] =>
  Object.entries(slides).flatMap(([slide, { adjusters }]) =>
    ADJUSTERS.flatMap((name) => {
      const { least, most, step } = adjusters[name];
      const field = `slides.${slide}.adjusters.${name}`;
      const what = 'an adjuster begins where it moves nothing';
      return [
        ...(least.value > 0
          ? [fault('adjuster-range', `${field}.least`, `it is above 0, but ${what}; write 0 or less`)]
          : []),
        ...(most.value < 0
          ? [fault('adjuster-range', `${field}.most`, `it is below 0, but ${what}; write 0 or more`)]
          : []),
        ...(least.value <= 0 && most.value >= 0 && step.value > most.value - least.value
          ? [
              fault(
                'adjuster-step',
                `${field}.step`,
                'one step is more than the whole range; write a smaller one, or 0 where it is not known',
              ),
            ]
          : []),
      ];
    }),
  );
