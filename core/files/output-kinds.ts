/** A kind of file that an order's folder may hold. */
export interface OutputKind {
  /** As the command line takes it and the manifest names it. */
  readonly id: string;
  readonly group: 'formats' | 'lists' | 'paper' | 'extras';
  readonly label: string;
  /** What it is for, for someone who chooses. */
  readonly purpose: string;
  /** Written only when somebody asks for it. */
  readonly onRequest?: true;
}

/** The groups that kinds are chosen in; each is an option of the command line. */
export const OUTPUT_GROUPS = [
  { id: 'formats', label: 'Cut files, one for each part' },
  { id: 'lists', label: 'Lists of the order' },
  { id: 'paper', label: 'To print' },
  { id: 'extras', label: 'More, when it is wanted' },
] as const satisfies readonly { readonly id: OutputKind['group']; readonly label: string }[];

/** Every kind of file that can be chosen, in the order of the folder. The manifest is always written. */
export const OUTPUT_KINDS = [
  { id: 'dxf', group: 'formats', label: 'DXF', purpose: 'for laser and router programs' },
  { id: 'svg', group: 'formats', label: 'SVG', purpose: 'for drawing programs, always in millimetres' },
  {
    id: 'fit',
    group: 'lists',
    label: 'fit.csv',
    purpose: 'the four overhangs and the sizes of every drawer',
  },
  {
    id: 'schedule',
    group: 'lists',
    label: 'schedule.csv',
    purpose: 'which jig serves which drawer, and at which edge',
  },
  { id: 'parts', group: 'lists', label: 'parts.csv', purpose: 'what to cut from what, and how many' },
  {
    id: 'read-first',
    group: 'lists',
    label: 'read-first.txt',
    purpose: 'how each jig goes together and is used, and the cautions',
  },
  {
    id: 'templates',
    group: 'paper',
    label: 'Templates',
    purpose: 'the back of every front at true size: box, screws and pull, to fold over its edges',
  },
  {
    id: 'instructions',
    group: 'paper',
    label: 'Instructions',
    purpose: 'one page for each set-up: pictures, steps and numbers',
  },
  { id: 'checklist', group: 'paper', label: 'Checklist', purpose: 'every drawer, to tick off' },
  {
    id: 'calibration',
    group: 'paper',
    label: 'Printer calibration',
    purpose: 'a page that shows how far off your printer is',
    onRequest: true,
  },
  {
    id: 'sheets',
    group: 'extras',
    label: 'Sheets',
    purpose: 'all parts laid out on whole sheets, to cut in one go, and a list of them',
    onRequest: true,
  },
  {
    id: 'coupon',
    group: 'extras',
    label: 'Coupon',
    purpose: 'a test piece that tells the width of your cut and how tight your joints are',
    onRequest: true,
  },
  {
    id: 'solids',
    group: 'extras',
    label: 'Solids',
    purpose: 'STL and 3MF of every jig, for those who print it',
    onRequest: true,
  },
] as const satisfies readonly OutputKind[];

export type OutputKindId = (typeof OUTPUT_KINDS)[number]['id'];

const ALL: readonly OutputKind[] = OUTPUT_KINDS;

/** Whether a kind is written when nobody has chosen. */
export const isUsual = (id: OutputKindId): boolean => ALL.find((kind) => kind.id === id)?.onRequest !== true;

/** What is printed, in the order of the list. */
export const PAPER_KINDS = ['templates', 'instructions', 'checklist', 'calibration'] as const;

export type PaperKind = (typeof PAPER_KINDS)[number];
