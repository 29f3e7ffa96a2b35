import type { Vec3 } from '../jigs/types.ts';
import { offsetOf } from './offset-of.ts';
import type { SceneContact, SeatScene, Solid, Step } from './types.ts';

/** What of a seat is shown, and how. */
export interface Showing {
  /** The step of its use; null for the seat as it is. */
  readonly step: Step | null;
  /** How much of the step has passed, from 0 to 1. */
  readonly share: number;
  /** How far it is drawn apart, from 0 to 1. */
  readonly apart: number;
  /** Where it is cut, mm along the section's axis; null when whole. */
  readonly cutAt: number | null;
  /** Whether the spaces to keep clear are drawn. */
  readonly zones: boolean;
}

/** The solids that are shown. */
export const shownSolids = ({ solids, tools }: SeatScene, { step }: Showing): readonly Solid[] =>
  step === null ? solids : [...solids, ...tools].filter(({ group }) => step.shown.includes(group));

/** How far a solid is drawn from its seat, mm. */
export const shownOffset = (solid: Solid, { step, share, apart }: Showing): Vec3 =>
  offsetOf(solid, step, share, apart);

/** The overhangs are there once the box is. */
export const showsDimensions = ({ step }: Pick<Showing, 'step'>): boolean =>
  step === null || step.shown.includes('box');

/** Faces that touch, each with the solid that it is marked on: of a seat drawn apart, on both things. */
export function shownContacts(
  scene: SeatScene,
  { step, share, apart }: Showing,
): readonly { readonly contact: SceneContact; readonly solid: Solid }[] {
  return touching(scene, step, share).flatMap((contact) => {
    const ids = apart > 0 ? [contact.solid, TOUCHED[contact.on]] : [contact.solid];
    return scene.solids.filter(({ id }) => ids.includes(id)).map((solid) => ({ contact, solid }));
  });
}

/** The faces that touch by now: those of a step are there when it has come to its end. */
const touching = ({ contacts }: SeatScene, step: Step | null, share: number): readonly SceneContact[] =>
  step === null ? contacts : share < 1 ? [] : contacts.filter(({ on }) => step.touching.includes(on));

/** The solid on which a contact is marked when the scene is drawn apart. */
const TOUCHED: Readonly<Record<SceneContact['on'], string>> = {
  'front edge': 'front',
  'front back': 'front',
  box: 'box-front',
  'box side inside': 'box-front',
  'box bottom': 'box-bottom',
  'box front inside': 'box-front',
  'box top edge': 'box-front',
};
