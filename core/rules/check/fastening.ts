import type { Finding } from '../../findings/finding.ts';
import { SAME_LENGTH } from '../../units/tolerances.ts';
import type { StockScrew } from '../fastening-types.ts';
import type { ShopStandard } from '../types.ts';
import type { Fault } from './fault.ts';

/** There is something to screw with, and the sizes of each thing go together. */
export const checkFastening = ({ fastening }: ShopStandard, fault: Fault): readonly Finding[] => {
  const { stock, bits, driver, guide } = fastening;
  const empty = Object.entries({ stock, bits, driver }).flatMap(([list, items]) =>
    items.length > 0
      ? []
      : [fault('fastening-empty', `fastening.${list}`, 'the list is empty; write one at least')],
  );
  const unsorted = bits.flatMap((bit, index) => {
    const before = bits[index - 1];
    if (before === undefined || before.value < bit.value - SAME_LENGTH) return [];
    const what = 'it is no thicker than the bit before it; write them from thin to thick, each once';
    return [fault('bits-order', `fastening.bits.${index}`, what)];
  });
  const thinnest = bits[0];
  const bushing =
    thinnest !== undefined && guide.bushing.value > 0 && guide.bushing.value <= thinnest.value
      ? [
          fault(
            'bushing-thin',
            'fastening.guide.bushing',
            'it is no thicker than the thinnest bit, which runs in it; write its outer diameter, or 0 for none',
          ),
        ]
      : [];
  const step =
    fastening.largestAngle.value > 0 && fastening.angleStep.value > fastening.largestAngle.value
      ? [
          fault(
            'angle-step',
            'fastening.angleStep',
            'one step is more than the largest angle; write a smaller one',
          ),
        ]
      : [];
  return [...empty, ...stock.flatMap((screw) => checkScrew(screw, fault)), ...unsorted, ...bushing, ...step];
};

function checkScrew(screw: StockScrew, fault: Fault): readonly Finding[] {
  const { name, diameter, root, headDiameter, length, thread } = screw;
  const field = `fastening.stock.${name}`;
  return [
    ...(root.value < diameter.value
      ? []
      : [
          fault(
            'screw-root',
            `${field}.root`,
            'it is no thinner than the screw over its threads; write less',
          ),
        ]),
    ...(headDiameter.value > diameter.value
      ? []
      : [fault('screw-head', `${field}.headDiameter`, 'the head is no wider than the screw; write more')]),
    ...(thread.value <= length.value + SAME_LENGTH
      ? []
      : [
          fault(
            'screw-thread',
            `${field}.thread`,
            'the thread is longer than the screw; write the length of the screw at most',
          ),
        ]),
  ];
}
