/** Tangent of an angle in degrees. */
export const tanDegrees = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);
