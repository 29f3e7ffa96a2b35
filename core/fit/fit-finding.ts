import type { Finding, Place } from '../findings/finding.ts';
import { error, warning } from '../findings/make.ts';
import type { Drawer } from '../order/types.ts';
import { drawerName } from './drawer-name.ts';

/** Where a finding about a drawer stands: its row, the column to change, its name. */
const placeOf = (drawer: Drawer, column: string | undefined): Place => ({
  ...(drawer.row > 0 ? { row: drawer.row } : {}),
  ...(column === undefined ? {} : { column }),
  drawer: drawerName(drawer),
});

interface About {
  readonly drawer: Drawer;
  /** The column to change; absent when several could be. */
  readonly column?: string | undefined;
  readonly values: Finding['values'];
}

const told = ({ drawer }: About, words: string): string =>
  `Drawer ${drawerName(drawer)}${drawer.row > 0 ? `, row ${drawer.row}` : ''}: ${words}.`;

/** An error of one drawer's fit: `Drawer Hall / B1 / top, row 5: the box ...`. */
export const fitError = (code: string, words: string, about: About): Finding =>
  error(`fit/${code}`, told(about, words), placeOf(about.drawer, about.column), about.values);

/** A warning of one drawer's fit. */
export const fitWarning = (code: string, words: string, about: About): Finding =>
  warning(`fit/${code}`, told(about, words), placeOf(about.drawer, about.column), about.values);
