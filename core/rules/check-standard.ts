import type { Finding } from '../findings/finding.ts';
import { error } from '../findings/make.ts';
import type { DocumentPlace } from '../order/field-findings.ts';
import { checkBox } from './check/box.ts';
import { checkFastening } from './check/fastening.ts';
import type { Fault } from './check/fault.ts';
import { checkFront } from './check/front.ts';
import { checkMembers } from './check/members.ts';
import { checkNames } from './check/names.ts';
import { checkPulls } from './check/pulls.ts';
import { checkReveals } from './check/reveals.ts';
import { checkSlides } from './check/slides.ts';
import type { ShopStandard } from './types.ts';

const CHECKS: readonly ((standard: ShopStandard, fault: Fault) => readonly Finding[])[] = [
  checkNames,
  checkSlides,
  checkMembers,
  checkReveals,
  checkFront,
  checkBox,
  checkFastening,
  checkPulls,
];

/** What must hold between the values of a shop standard, each fault with the path of its field. */
export function checkStandard(standard: ShopStandard, place: DocumentPlace): readonly Finding[] {
  const { file, within = [] } = place;
  const fault: Fault = (code, path, what) => {
    const field = [...within, path].join('.');
    return error(`rules/${code}`, `Field ${field}: ${what}.`, { file, field });
  };
  return CHECKS.flatMap((check) => check(standard, fault));
}
