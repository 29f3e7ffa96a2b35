import { designOrder } from '../../core/pipeline.ts';
import { draftReader } from '../../core/session/draft-reader.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { exports, limits, offsets } from './beside.ts';
import { runChain } from './chain.ts';
import { edits } from './edit.ts';
import { growth, shares } from './growth.ts';
import { alikeDraft, distinctDraft } from './orders.ts';

const tell = async (lines: Iterable<string> | AsyncIterable<string>): Promise<void> => {
  for await (const line of lines) process.stdout.write(`${line}\n`);
  process.stdout.write('\n');
};

/** The parts of the demo order. */
function demoParts() {
  const draft = alikeDraft(36);
  const { standard, machine, registration } = draft;
  const order = draftReader().read(draft).value;
  const { parts } = designOrder(order, { standard, machine, registration, font: STROKE_FONT }).value;
  return { machine, parts };
}

/** Everything runs in one go, for only ratios within one run say anything on a busy machine. */
const { machine, parts } = demoParts();
await runChain(alikeDraft(36));
await tell(offsets(parts, machine));
await tell(exports(parts, machine));
await tell(limits());
await tell(edits(alikeDraft(500)));
await tell(shares('1,000 drawers', alikeDraft(1000)));
await tell(growth('all different', distinctDraft, [1, 10, 100, 1000]));
await tell(growth("a shop's order", alikeDraft, [1, 10, 100, 1000, 10_000]));
