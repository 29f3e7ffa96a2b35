/** The part of a user action that menus, keys, buttons and the list of commands share; the renderer adds what it does. */
export interface ActionRecord {
  readonly id: string;
  /** In sentence case: `Add a row`. */
  readonly label: string;
  readonly menu: 'File' | 'Edit' | 'View';
  /** Begins a group, set apart by a line. */
  readonly group?: true;
  /** `Mod+Shift+Z`: Mod is Ctrl, or Cmd on a Mac. Null when there is none. */
  readonly shortcut: string | null;
}

/** All actions, in the order of the menu. Keys that a browser keeps for itself work on the desktop only. */
export const ACTIONS = [
  { id: 'file.new', label: 'New order', menu: 'File', shortcut: null },
  { id: 'file.open', label: 'Open…', menu: 'File', shortcut: 'Mod+O' },
  { id: 'file.demo', label: 'Open the demo order', menu: 'File', shortcut: null },
  { id: 'file.save', label: 'Save', menu: 'File', shortcut: 'Mod+S', group: true },
  { id: 'file.save-as', label: 'Save as…', menu: 'File', shortcut: 'Mod+Shift+S' },
  { id: 'file.print', label: 'Print…', menu: 'File', shortcut: 'Mod+P', group: true },
  { id: 'edit.undo', label: 'Undo', menu: 'Edit', shortcut: 'Mod+Z' },
  { id: 'edit.redo', label: 'Redo', menu: 'Edit', shortcut: 'Mod+Shift+Z' },
  { id: 'order.add-row', label: 'Add a row', menu: 'Edit', shortcut: 'Mod+Enter', group: true },
  { id: 'order.duplicate-row', label: 'Duplicate the row', menu: 'Edit', shortcut: 'Mod+D' },
  { id: 'order.remove-row', label: 'Remove the row', menu: 'Edit', shortcut: 'Mod+Delete' },
  { id: 'order.move-row-up', label: 'Move the row up', menu: 'Edit', shortcut: 'Alt+ArrowUp' },
  { id: 'order.move-row-down', label: 'Move the row down', menu: 'Edit', shortcut: 'Alt+ArrowDown' },
  { id: 'order.next-row', label: 'Next row', menu: 'Edit', shortcut: 'Mod+ArrowDown', group: true },
  { id: 'order.previous-row', label: 'Previous row', menu: 'Edit', shortcut: 'Mod+ArrowUp' },
  { id: 'order.next-attention', label: 'Next row that needs attention', menu: 'Edit', shortcut: 'F8' },
  {
    id: 'order.previous-attention',
    label: 'Previous row that needs attention',
    menu: 'Edit',
    shortcut: 'Shift+F8',
  },
  { id: 'go.bench', label: 'Bench', menu: 'View', shortcut: 'Mod+1' },
  { id: 'go.standard', label: 'Shop standard', menu: 'View', shortcut: 'Mod+2' },
  { id: 'go.machine', label: 'Machine', menu: 'View', shortcut: 'Mod+3' },
  { id: 'go.output', label: 'Files out', menu: 'View', shortcut: 'Mod+4' },
  { id: 'go.jigs', label: 'Jig plan', menu: 'View', shortcut: 'Mod+5' },
  { id: 'stage.seat', label: 'Show the seat', menu: 'View', shortcut: 'Alt+1', group: true },
  { id: 'stage.cabinet', label: 'Show the cabinet', menu: 'View', shortcut: 'Alt+2' },
  { id: 'stage.part', label: 'Show the part', menu: 'View', shortcut: 'Alt+3' },
  { id: 'stage.screw', label: 'Show the screws', menu: 'View', shortcut: 'Alt+4' },
  { id: 'stage.gaps', label: 'Show the gaps', menu: 'View', shortcut: 'Alt+5' },
  {
    id: 'order.only-attention',
    label: 'Only rows that need attention',
    menu: 'View',
    shortcut: 'Mod+Shift+F',
    group: true,
  },
  { id: 'view.unit', label: 'Lengths in millimetres', menu: 'View', shortcut: 'Mod+Shift+U' },
  { id: 'view.theme', label: 'Dark colours', menu: 'View', shortcut: 'Mod+Shift+L' },
] as const satisfies readonly ActionRecord[];

export type ActionId = (typeof ACTIONS)[number]['id'];
