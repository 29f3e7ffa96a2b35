import { added } from './added-text.ts';

const HANDBOOK = 'Wood Handbook GTR-190 (2010)';

/** Where a row's movement coefficients come from. */
const MOVEMENT = {
  seen: `${HANDBOOK}, Table 13-5`,
  checked: `${HANDBOOK}, Table 13-5, from memory; agrees with the shrinkage of Table 4-3`,
  memory: `${HANDBOOK}, Table 13-5, from memory`,
  example: `${HANDBOOK}, worked example of chapter 13`,
} as const;

/** Where its specific gravity comes from. */
const GRAVITY = {
  handbook: 'Wood Handbook GTR-282 (2021), as a geotechnical reference library transcribes it',
  strength: 'a table of strength after the Wood Handbook',
  army: 'Army TM 5-852-4, Table 2-2, after the Forest Products Laboratory',
  memory: 'Wood Handbook, from memory',
} as const;

type Row = readonly [
  name: string,
  handbookName: string,
  radial: string,
  tangential: string,
  movement: keyof typeof MOVEMENT,
  specificGravity: string,
  gravity: keyof typeof GRAVITY,
];

const HARDWOODS: readonly Row[] = [
  ['red alder', 'alder, red', '0.00151', '0.00256', 'seen', '0.41', 'strength'],
  ['white ash', 'ash, white', '0.00169', '0.00274', 'seen', '0.60', 'handbook'],
  ['quaking aspen', 'aspen, quaking', '0.00119', '0.00234', 'seen', '0.38', 'strength'],
  ['American basswood', 'basswood, American', '0.00230', '0.00330', 'seen', '0.37', 'strength'],
  ['American beech', 'beech, American', '0.00190', '0.00431', 'seen', '0.64', 'strength'],
  ['paper birch', 'birch, paper', '0.00219', '0.00304', 'seen', '0.55', 'strength'],
  ['yellow birch', 'birch, yellow', '0.00256', '0.00338', 'seen', '0.62', 'strength'],
  ['butternut', 'butternut', '0.00116', '0.00223', 'seen', '0.38', 'strength'],
  ['black cherry', 'cherry, black', '0.00126', '0.00248', 'seen', '0.50', 'handbook'],
  ['American elm', 'elm, American', '0.00144', '0.00338', 'seen', '0.50', 'strength'],
  ['hackberry', 'hackberry', '0.00165', '0.00315', 'seen', '0.53', 'strength'],
  ['pecan hickory', 'hickory, pecan', '0.00169', '0.00315', 'seen', '0.66', 'strength'],
  ['hard maple', 'maple, sugar', '0.00165', '0.00353', 'seen', '0.63', 'handbook'],
  ['red maple', 'maple, red', '0.00137', '0.00289', 'seen', '0.54', 'strength'],
  ['silver maple', 'maple, silver', '0.00102', '0.00252', 'seen', '0.47', 'memory'],
  ['bigleaf maple', 'maple, bigleaf', '0.00126', '0.00248', 'seen', '0.48', 'strength'],
  [
    'red oak',
    'red oak, commercial; gravity of northern red',
    '0.00158',
    '0.00369',
    'seen',
    '0.63',
    'handbook',
  ],
  ['white oak', 'white oak, commercial; gravity of white', '0.00180', '0.00365', 'seen', '0.68', 'handbook'],
  ['sweetgum', 'sweetgum', '0.00183', '0.00365', 'seen', '0.52', 'memory'],
  ['American sycamore', 'sycamore, American', '0.00172', '0.00296', 'seen', '0.49', 'memory'],
  ['black walnut', 'walnut, black', '0.00190', '0.00274', 'seen', '0.55', 'memory'],
  ['yellow-poplar', 'yellow-poplar', '0.00158', '0.00289', 'checked', '0.42', 'handbook'],
];

const SOFTWOODS: readonly Row[] = [
  ['Douglas-fir', 'Douglas-fir, coast', '0.00165', '0.00267', 'checked', '0.48', 'handbook'],
  ['western redcedar', 'redcedar, western', '0.00111', '0.00234', 'checked', '0.32', 'memory'],
  ['incense cedar', 'cedar, incense', '0.00112', '0.00180', 'checked', '0.37', 'memory'],
  ['yellow cedar', 'cedar, yellow', '0.00095', '0.00208', 'checked', '0.44', 'army'],
  ['eastern redcedar', 'redcedar, eastern', '0.00106', '0.00162', 'checked', '0.47', 'memory'],
  ['white fir', 'fir, white', '0.00112', '0.00245', 'example', '0.39', 'handbook'],
  ['western hemlock', 'hemlock, western', '0.00144', '0.00274', 'checked', '0.45', 'handbook'],
  ['western larch', 'larch, western', '0.00155', '0.00323', 'checked', '0.52', 'handbook'],
  ['loblolly pine', 'pine, loblolly', '0.00165', '0.00259', 'checked', '0.51', 'handbook'],
  ['longleaf pine', 'pine, longleaf', '0.00176', '0.00263', 'checked', '0.59', 'handbook'],
  ['lodgepole pine', 'pine, lodgepole', '0.00148', '0.00234', 'checked', '0.41', 'handbook'],
  ['eastern white pine', 'pine, eastern white', '0.00071', '0.00212', 'memory', '0.35', 'memory'],
  ['ponderosa pine', 'pine, ponderosa', '0.00133', '0.00216', 'memory', '0.40', 'army'],
  ['sugar pine', 'pine, sugar', '0.00099', '0.00194', 'memory', '0.36', 'memory'],
  ['western white pine', 'pine, western white', '0.00141', '0.00259', 'memory', '0.38', 'memory'],
  ['Engelmann spruce', 'spruce, Engelmann', '0.00130', '0.00248', 'checked', '0.35', 'handbook'],
  ['Sitka spruce', 'spruce, Sitka', '0.00148', '0.00263', 'memory', '0.40', 'army'],
  ['redwood', 'redwood, old-growth', '0.00120', '0.00205', 'memory', '0.40', 'memory'],
];

const species =
  (softwood: boolean) =>
  ([name, handbookName, radial, tangential, movement, specificGravity, gravity]: Row) => {
    // Of white fir the worked example prints C_R alone.
    const ofTangential = movement === 'example' ? 'checked' : movement;
    const document = {
      specificGravity: added(plain(specificGravity), `${GRAVITY[gravity]}: ${handbookName}`),
      softwood,
      radial: added(plain(radial), `${MOVEMENT[movement]}: ${handbookName}`),
      tangential: added(plain(tangential), `${MOVEMENT[ofTangential]}: ${handbookName}`),
    };
    return [name, document] as const;
  };

/** Without the zeros that a table ends its numbers with. */
const plain = (text: string): string => text.replace(/0+$/, '');

/** The species of the Wood Handbook, by names that people write. */
export const ADDED_SPECIES = Object.fromEntries([
  ...HARDWOODS.map(species(false)),
  ...SOFTWOODS.map(species(true)),
]);
