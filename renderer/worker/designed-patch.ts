import type { Designed } from '../../core/session/types.ts';
import type { DesignedPatch } from './messages.ts';
import { listPatch, patchedList, patchedRecord, recordPatch } from './patches.ts';

/** What a design is before the first one. */
export const NO_DESIGN: Designed = {
  revision: 0,
  isWhole: false,
  findings: [],
  fits: {},
  budgets: {},
  seasons: {},
  fastenings: {},
  jigs: [],
  aids: [],
  uses: [],
  sharing: null,
  parts: [],
};

/** What turns one design into another. */
export function designedPatch(before: Designed, after: Designed): DesignedPatch {
  const findings = listPatch(before.findings, after.findings);
  const fits = recordPatch(before.fits, after.fits);
  const budgets = recordPatch(before.budgets, after.budgets);
  const seasons = recordPatch(before.seasons, after.seasons);
  const fastenings = recordPatch(before.fastenings, after.fastenings);
  const aids = listPatch(before.aids, after.aids);
  const jigs = listPatch(before.jigs, after.jigs);
  const uses = listPatch(before.uses, after.uses);
  const parts = listPatch(before.parts, after.parts);
  return {
    revision: after.revision,
    isWhole: after.isWhole,
    ...(findings === undefined ? {} : { findings }),
    ...(fits === undefined ? {} : { fits }),
    ...(budgets === undefined ? {} : { budgets }),
    ...(seasons === undefined ? {} : { seasons }),
    ...(fastenings === undefined ? {} : { fastenings }),
    ...(aids === undefined ? {} : { aids }),
    ...(jigs === undefined ? {} : { jigs }),
    ...(uses === undefined ? {} : { uses }),
    ...(before.sharing === after.sharing ? {} : { sharing: after.sharing }),
    ...(parts === undefined ? {} : { parts }),
  };
}

/** The other design; what is in both keeps its identity. */
export const patchedDesigned = (before: Designed, patch: DesignedPatch): Designed => ({
  revision: patch.revision,
  isWhole: patch.isWhole,
  findings: patchedList(before.findings, patch.findings),
  fits: patchedRecord(before.fits, patch.fits),
  budgets: patchedRecord(before.budgets, patch.budgets),
  seasons: patchedRecord(before.seasons, patch.seasons),
  fastenings: patchedRecord(before.fastenings, patch.fastenings),
  aids: patchedList(before.aids, patch.aids),
  jigs: patchedList(before.jigs, patch.jigs),
  uses: patchedList(before.uses, patch.uses),
  sharing: patch.sharing === undefined ? before.sharing : patch.sharing,
  parts: patchedList(before.parts, patch.parts),
});
