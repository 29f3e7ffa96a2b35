import type { ListedFile } from '../../core/files/manifest.ts';
import type { OutputChoice } from '../../core/files/output-choice.ts';
import type { BundleFile } from '../../core/bundle.ts';
import type { Finding } from '../../core/findings/finding.ts';
import type { Draft, DraftRow } from '../../core/project/draft.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import type { FitComparison } from '../../core/session/compare-fits.ts';
import type { MachineComparison } from '../../core/session/compare-machines.ts';
import type { OrderRework } from '../../core/gap-view/order-rework.ts';
import type { StudyOutcome } from '../../core/jigs/sharing/study-jigs.ts';
import type { Designed, PartDetail } from '../../core/session/types.ts';
import type { Fastening } from '../../core/fastening/types.ts';
import type { AdjustmentBudget } from '../../core/fit/budget/types.ts';
import type { SeasonBudget } from '../../core/fit/seasons/types.ts';
import type { DrawerFit } from '../../core/fit/types.ts';
import type { ListPatch, RecordPatch } from './patches.ts';

/** What is different in a draft; absent is as before. */
export interface DraftPatch {
  readonly rows?: ListPatch<DraftRow>;
  readonly fields: Omit<Partial<Draft>, 'rows'>;
  /** The draft has no date any more. */
  readonly undated?: true;
}

/** What is different in a design; absent is as before. */
export interface DesignedPatch {
  readonly revision: number;
  readonly isWhole: boolean;
  readonly findings?: ListPatch<Designed['findings'][number]>;
  readonly fits?: RecordPatch<DrawerFit>;
  readonly budgets?: RecordPatch<AdjustmentBudget>;
  readonly seasons?: RecordPatch<SeasonBudget>;
  readonly fastenings?: RecordPatch<Fastening>;
  readonly aids?: ListPatch<Designed['aids'][number]>;
  readonly jigs?: ListPatch<Designed['jigs'][number]>;
  readonly uses?: ListPatch<Designed['uses'][number]>;
  readonly parts?: ListPatch<Designed['parts'][number]>;
  readonly sharing?: Designed['sharing'];
}

/** What the worker is told. */
export type ToWorker =
  | { readonly kind: 'design'; readonly revision: number; readonly patch: DraftPatch }
  /** What was looked at is on the screen: the rest of its design may be worked out. */
  | { readonly kind: 'go-on' }
  | { readonly kind: 'part'; readonly call: number; readonly partId: string }
  /** What another shop standard, or another machine, would do to the draft that was sent last. */
  | { readonly kind: 'try-standard'; readonly call: number; readonly standard: ShopStandard }
  | { readonly kind: 'try-machine'; readonly call: number; readonly machine: MachineProfile }
  /** How many fronts of the newest design will need rework. */
  | { readonly kind: 'rework'; readonly call: number }
  /** What sharing jigs would come to in the draft that was sent last. */
  | { readonly kind: 'study-jigs'; readonly call: number }
  | { readonly kind: 'export'; readonly call: number; readonly choice?: OutputChoice }
  /** A file has been written. */
  | { readonly kind: 'listed'; readonly call: number; readonly file: WrittenFile }
  | { readonly kind: 'stop'; readonly call: number };

/** What the platform says of a file that it has written. */
export type WrittenFile = Pick<ListedFile, 'size' | 'sha256'>;

/** What the worker tells. */
export type FromWorker =
  /** It runs, and fetches by itself what it works with. */
  | { readonly kind: 'begun' }
  /** The beginning of a design, without screws, aids and parts; the rest is made after `go-on`. */
  | { readonly kind: 'looked'; readonly patch: DesignedPatch }
  | { readonly kind: 'designed'; readonly patch: DesignedPatch }
  | { readonly kind: 'part'; readonly call: number; readonly detail: PartDetail | null }
  | { readonly kind: 'tried-standard'; readonly call: number; readonly comparison: FitComparison }
  | { readonly kind: 'tried-machine'; readonly call: number; readonly comparison: MachineComparison }
  | { readonly kind: 'reworked'; readonly call: number; readonly rework: OrderRework | null }
  | { readonly kind: 'studied-jigs'; readonly call: number; readonly outcome: StudyOutcome }
  | { readonly kind: 'progress'; readonly call: number; readonly done: number; readonly of: number }
  /** A file to be written; the worker waits until it is. */
  | { readonly kind: 'file'; readonly call: number; readonly file: Pick<BundleFile, 'path' | 'content'> }
  | { readonly kind: 'exported'; readonly call: number; readonly files: number }
  | { readonly kind: 'refused'; readonly call: number; readonly findings: readonly Finding[] }
  /** A fault of the program; `revision` when it was in a design, `call` when in an answer. */
  | {
      readonly kind: 'failed';
      readonly revision: number | null;
      readonly call: number | null;
      readonly reason: string;
    };

/** One end of the line between the two; a fake in tests. */
export interface Port<Out, In> {
  readonly post: (message: Out) => void;
  readonly listen: (receive: (message: In) => void) => void;
}
