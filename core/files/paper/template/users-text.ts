import { drawerName } from '../../../fit/drawer-name.ts';
import type { DrawerFit } from '../../../fit/types.ts';
import type { PaperWords } from '../words/en.ts';

/** The drawers of a template, with how many there are of each: `R2 / left top (2), W3 / top`. */
export const usersText = (users: readonly DrawerFit[], words: PaperWords): string =>
  users.map(({ drawer }) => words.template.drawer(drawerName(drawer), drawer.qty)).join(', ');
