/** mm. Plate of a drill guide where nothing else is said: 3/4 in sheet as it measures; common practice, no source. */
export const GUIDE_THICKNESS = 18;
