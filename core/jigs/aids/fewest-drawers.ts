/**
 * A straight guide or a template is cut where at least so many drawers use it; fewer are marked from their paper
 * templates. Common practice, no source.
 */
export const FEWEST_DRAWERS = 3;
