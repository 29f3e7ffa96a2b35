import type { StandardView } from '../../core/scene/types.ts';

/** In the plane of the picture, mm. */
export interface Shift {
  readonly x: number;
  readonly y: number;
}

/** How one looks at a seat, whichever it is. */
export interface Look {
  /** The standard view, or the one that it was turned from. */
  readonly view: StandardView['id'];
  /** Degrees from that view. */
  readonly turned: { readonly azimuth: number; readonly elevation: number };
  /** Times the size at which all is seen. */
  readonly enlarged: number;
  readonly off: Shift;
}

/** What is local to the view; none of it depends on which seat is shown. */
export interface SeatState {
  readonly look: Look;
  /** Where it is cut, as a share of the jig's length; null when it is whole. */
  readonly cut: number | null;
  /** How far it is drawn apart, from 0 to 1. */
  readonly apart: number;
  /** The step of use that is shown, or null for the seat as it is. */
  readonly step: number | null;
  readonly playing: boolean;
  /** Whether the spaces to keep clear are drawn. */
  readonly zones: boolean;
}

export type SeatAction =
  | { readonly do: 'view'; readonly view: StandardView['id'] }
  | { readonly do: 'turn'; readonly azimuth: number; readonly elevation: number }
  | { readonly do: 'enlarge'; readonly by: number }
  | { readonly do: 'move'; readonly by: Shift }
  | { readonly do: 'show all' }
  | { readonly do: 'cut'; readonly at: number | null }
  | { readonly do: 'apart'; readonly share: number }
  | { readonly do: 'step'; readonly step: number | null; readonly playing?: boolean }
  | { readonly do: 'play'; readonly playing: boolean }
  | { readonly do: 'zones'; readonly shown: boolean };

const ALL: Omit<Look, 'view'> = {
  turned: { azimuth: 0, elevation: 0 },
  enlarged: 1,
  off: { x: 0, y: 0 },
};

export const FIRST_STATE: SeatState = {
  look: { view: 'three-quarter', ...ALL },
  cut: null,
  apart: 0,
  step: null,
  playing: false,
  zones: false,
};

/** Whether it is the standard view itself. */
export const isView = ({ view, turned }: Look, id: Look['view']): boolean =>
  view === id && turned.azimuth === 0 && turned.elevation === 0;

const LARGEST = 20;
const SMALLEST = 0.2;

export function seatReducer(state: SeatState, action: SeatAction): SeatState {
  const { look } = state;
  switch (action.do) {
    case 'view':
      return { ...state, look: { ...ALL, view: action.view } };
    case 'turn': {
      const { azimuth, elevation } = look.turned;
      const turned = { azimuth: azimuth + action.azimuth, elevation: elevation + action.elevation };
      return { ...state, look: { ...look, turned } };
    }
    case 'enlarge': {
      const enlarged = Math.max(SMALLEST, Math.min(LARGEST, look.enlarged * action.by));
      return { ...state, look: { ...look, enlarged } };
    }
    case 'move': {
      const { x, y } = action.by;
      return { ...state, look: { ...look, off: { x: look.off.x + x, y: look.off.y + y } } };
    }
    case 'show all':
      return { ...state, look: { ...look, enlarged: 1, off: ALL.off } };
    case 'cut':
      return { ...state, cut: action.at };
    case 'apart':
      return { ...state, apart: action.share };
    case 'step':
      return { ...state, step: action.step, playing: action.playing ?? false };
    case 'play':
      return { ...state, playing: action.playing };
    default:
      return { ...state, zones: action.shown };
  }
}
