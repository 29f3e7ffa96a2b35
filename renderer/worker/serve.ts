import type { BundleWatch } from '../../core/bundle.ts';
import { orderRework } from '../../core/gap-view/order-rework.ts';
import type { LoadSolver } from '../../core/jigs/sharing/lazy-solver.ts';
import type { Shared } from '../../core/jigs/sharing/share-order.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import type { StrokeFont } from '../../core/parts/stroke-font.ts';
import type { Draft } from '../../core/project/draft.ts';
import { compareFits } from '../../core/session/compare-fits.ts';
import { compareMachines } from '../../core/session/compare-machines.ts';
import { createDesignSession } from '../../core/session/design-session.ts';
import { jigSharer } from '../../core/session/jig-sharer.ts';
import { designedPatch, NO_DESIGN } from './designed-patch.ts';
import { patchedDraft } from './draft-patch.ts';
import { exportStreams } from './export-streams.ts';
import type { DraftPatch, FromWorker, Port, ToWorker } from './messages.ts';

const NO_SOLVER: LoadSolver = () => Promise.reject(new Error('this place has none'));

/** Rows that are new in one draft; of so many, a first look is worth its time. */
const MANY = 12;

const isMuch = ({ rows = [] }: DraftPatch): boolean =>
  rows.filter((row) => typeof row !== 'number').length >= MANY;

/** Answers a port with one design session: the worker without its thread. */
export function serveDesign(
  port: Port<FromWorker, ToWorker>,
  font: StrokeFont,
  loadSolver: LoadSolver = NO_SOLVER,
  loadManifold?: BundleWatch['manifold'],
): void {
  const session = createDesignSession(font);
  const sharer = jigSharer(loadSolver);
  const exports = exportStreams(port, session, loadManifold);
  let draft: Draft | null = null;
  let sent = NO_DESIGN;
  /** Of the newest draft. */
  let revision = 0;
  /** The newest draft has been looked at, and its design is still to be made. */
  let isLook = false;
  /** Ends when the newest draft that shares jigs has its design. */
  let designing: Promise<void> = Promise.resolve();

  function receive(message: ToWorker): void {
    // Whatever is asked of a draft is answered from its whole design.
    if (isLook && message.kind !== 'design') goOn();
    switch (message.kind) {
      case 'design':
        draft = patchedDraft(draft, message.patch);
        revision = message.revision;
        if (isMuch(message.patch)) look(draft);
        else goOn();
        return;
      case 'go-on':
        return;
      case 'part':
        port.post({ kind: 'part', call: message.call, detail: session.part(message.partId) });
        return;
      case 'try-standard':
        port.post({
          kind: 'tried-standard',
          call: message.call,
          comparison: compareFits(sentDraft(), { ...sentDraft(), standard: message.standard }),
        });
        return;
      case 'try-machine':
        void tryMachine(message.call, message.machine);
        return;
      case 'rework':
        port.post({
          kind: 'reworked',
          call: message.call,
          rework: orderRework(sent.budgets, sentDraft().standard, sent.uses),
        });
        return;
      case 'study-jigs':
        void studyJigs(message.call);
        return;
      case 'export':
        void exports.begin(message.call, message.choice);
        return;
      case 'listed':
        exports.listed(message.call, message.file);
        return;
      case 'stop':
        exports.stop(message.call);
    }
  }

  function goOn(): void {
    isLook = false;
    const of = sentDraft();
    if (of.sharing === 'each') design(of, revision);
    else designing = designShared(of, revision);
  }

  function look(of: Draft): void {
    const designed = session.look(of, revision);
    port.post({ kind: 'looked', patch: designedPatch(sent, designed) });
    sent = designed;
    isLook = true;
  }

  function design(of: Draft, revision: number, shared?: Shared): void {
    const designed = session.design(of, revision, shared);
    port.post({ kind: 'designed', patch: designedPatch(sent, designed) });
    sent = designed;
  }

  /** The client sends no other draft before it has this one's design. */
  async function designShared(of: Draft, revision: number): Promise<void> {
    try {
      design(of, revision, await sharer.share(session.toShare(of), of.sharing));
    } catch (problem) {
      port.post({ kind: 'failed', revision, call: null, reason: String(problem) });
    }
  }

  async function tryMachine(call: number, machine: MachineProfile): Promise<void> {
    try {
      await designing;
      const of = sentDraft();
      const now = session.toShare(of);
      const comparison = compareMachines(of, machine, {
        fits: now.fits,
        fastenings: Object.values(sent.fastenings),
        jigs: sent.jigs,
        findings: sent.findings.map(({ finding }) => finding),
        sharedAfter: await sharer.tryOn({ ...now, context: { ...now.context, machine } }, of.sharing),
      });
      port.post({ kind: 'tried-machine', call, comparison });
    } catch (problem) {
      port.post({ kind: 'failed', revision: null, call, reason: String(problem) });
    }
  }

  async function studyJigs(call: number): Promise<void> {
    try {
      const outcome = await sharer.study(session.toShare(sentDraft()));
      port.post({ kind: 'studied-jigs', call, outcome });
    } catch (problem) {
      port.post({ kind: 'failed', revision: null, call, reason: String(problem) });
    }
  }

  function sentDraft(): Draft {
    if (draft === null) throw new RangeError('serveDesign: nothing can be tried on before a draft is sent');
    return draft;
  }

  port.listen((message) => {
    try {
      receive(message);
    } catch (problem) {
      const ofDesign = message.kind === 'design' || message.kind === 'go-on';
      port.post({
        kind: 'failed',
        revision: ofDesign ? revision : null,
        call: ofDesign ? null : message.call,
        reason: String(problem),
      });
    }
  });
}
