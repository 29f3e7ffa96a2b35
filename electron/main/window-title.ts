import type { DocumentState } from '../messages/ports.ts';

/** `Kitchen - not saved - Overhang`; told in words, since a star or a dot says nothing to a screen reader. */
export const windowTitle = ({ name, unsaved }: DocumentState): string =>
  [...(name === '' ? [] : [name]), ...(unsaved ? ['not saved'] : []), 'Overhang'].join(' - ');
