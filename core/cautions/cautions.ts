/** The usual cautions. They defer to the machine's manual, local codes and licensed practice. */
export const CAUTIONS: readonly string[] = [
  'Wear eye and hearing protection; collect dust at the source.',
  'Never leave a laser running unattended. Never laser PVC or any other chlorinated plastic.',
  'Hold the work down when drilling, and set the depth stop first.',
  'Keep fingers out of the pinch between box, jig and front.',
  'Anchor cabinets before you load or pull out their drawers.',
  "The machine's manual, local codes and licensed practice come first; this program replaces none of them.",
];
