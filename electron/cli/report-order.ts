import type { Call } from './arguments.ts';
import { makeOrder } from './make-order.ts';
import { NOTHING, type OrderReport } from './order-result.ts';
import { BadCall } from './output.ts';

/** Makes one order of several: whatever goes wrong is its own failure and no other's. */
export const reportOrder = (call: Call): Promise<OrderReport> =>
  makeOrder(call).catch((problem: unknown) => failedReport(call, problem));

/** Of an order that could not be read or written, or at which the program failed. */
export function failedReport(call: Call, problem: unknown): OrderReport {
  const message = problem instanceof Error ? problem.message : String(problem);
  const reason = problem instanceof BadCall ? message : `the program failed: ${message}`;
  return {
    result: {
      ...NOTHING,
      order: call.order,
      place: call.out,
      state: 'failed',
      reason,
      errors: 1,
      seconds: 0,
    },
    findings: [],
    text: '',
  };
}
