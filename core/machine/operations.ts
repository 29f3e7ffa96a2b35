/** What the machine does along a contour; each gets its own layer. */
export type Operation = 'engrave' | 'drill' | 'pocket' | 'cut-inner' | 'tab' | 'cut-outer';

/**
 * In the order in which a machine should run them: text first, the outline last. Tabs come just before the outline:
 * whoever programs the machine places them on it before it is cut, and a mark that is run by mistake is run while
 * the part still lies fast.
 */
export const OPERATIONS: readonly Operation[] = [
  'engrave',
  'drill',
  'pocket',
  'cut-inner',
  'tab',
  'cut-outer',
];
