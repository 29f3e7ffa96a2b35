/** The units of lengths to choose from. */
export const UNIT_CHOICES = [
  { value: 'in', label: 'inches' },
  { value: 'mm', label: 'millimetres' },
] as const;
