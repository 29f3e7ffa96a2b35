/** Unit in which people write and read lengths; inside, all lengths are millimetres. */
export type LengthUnit = 'in' | 'mm';
