import type { Designed } from '../../core/session/types.ts';
import type { DesignedPatch } from './messages.ts';
import { listPatch, patchedList, patchedRecord, recordPatch } from './patches.ts';

/** What a design is before the first one. */
export const NO_DESIGN: Designed = { revision: 0, findings: [], fits: {}, jigs: [], uses: [], parts: [] };

/** What turns one design into another. */
export function designedPatch(before: Designed, after: Designed): DesignedPatch {
  const findings = listPatch(before.findings, after.findings);
  const fits = recordPatch(before.fits, after.fits);
  const jigs = listPatch(before.jigs, after.jigs);
  const uses = listPatch(before.uses, after.uses);
  const parts = listPatch(before.parts, after.parts);
  return {
    revision: after.revision,
    ...(findings === undefined ? {} : { findings }),
    ...(fits === undefined ? {} : { fits }),
    ...(jigs === undefined ? {} : { jigs }),
    ...(uses === undefined ? {} : { uses }),
    ...(parts === undefined ? {} : { parts }),
  };
}

/** The other design; what is in both keeps its identity. */
export const patchedDesigned = (before: Designed, patch: DesignedPatch): Designed => ({
  revision: patch.revision,
  findings: patchedList(before.findings, patch.findings),
  fits: patchedRecord(before.fits, patch.fits),
  jigs: patchedList(before.jigs, patch.jigs),
  uses: patchedList(before.uses, patch.uses),
  parts: patchedList(before.parts, patch.parts),
});
