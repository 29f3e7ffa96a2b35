/** What the machine does along a contour; each gets its own layer. */
export type Operation = 'engrave' | 'drill' | 'pocket' | 'cut-inner' | 'cut-outer';

/** In the order in which a machine should run them: text first, the outline last. */
export const OPERATIONS: readonly Operation[] = ['engrave', 'drill', 'pocket', 'cut-inner', 'cut-outer'];
