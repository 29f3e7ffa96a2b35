import harborLibrary from '../../assets/orders/harbor-library.csv?raw';
import type { DraftRow } from '../../core/project/draft.ts';
import { readDemoRows } from './read-demo-rows.ts';

/** The rows of the demo order. The built page has here what they come to (`renderer/build/read-constants.ts`). */
export const DEMO_ROWS: readonly DraftRow[] = readDemoRows(harborLibrary);
