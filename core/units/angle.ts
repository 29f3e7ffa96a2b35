/** An angle in degrees, in radians. */
export const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Tangent of an angle in degrees. */
export const tanDegrees = (degrees: number): number => Math.tan(radians(degrees));
