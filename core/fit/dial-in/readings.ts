import type { Finding, Outcome } from '../../findings/finding.ts';
import type { Edge } from '../../order/types.ts';
import { FRONT_CORNERS, gapPlaces, type FrontCorner, type GapPlace } from '../budget/places.ts';
import { LARGEST_LENGTH } from '../../units/parse-length.ts';
import { fitError } from '../fit-finding.ts';
import type { DrawerFit } from '../types.ts';
import type { CornerReading, SeenGaps } from './types.ts';

/** A gap that was read at a place that should show one. */
export interface GapReading extends GapPlace {
  readonly seen: number;
  /** The gap that the fit predicts there. */
  readonly wanted: number;
}

/** How far a corner was read to stand out. */
export interface ProudReading {
  readonly corner: FrontCorner;
  readonly seen: number;
}

export interface Readings {
  readonly gaps: readonly GapReading[];
  readonly proud: readonly ProudReading[];
  /** Edges that were read though the front laps there. */
  readonly lapped: ReadonlySet<Edge>;
}

/** The readings that can be used; a gap that is no number, or below 0, is told and left out. */
export function readingsOf(seen: SeenGaps, fit: DrawerFit): Outcome<Readings> {
  const findings: Finding[] = [];
  const lapped = new Set<Edge>();
  const faulty = (corner: FrontCorner, what: string, value: number, accepted: string) =>
    findings.push(
      fitError(
        'reading',
        `the ${what} at the ${cornerWords(corner)} corner was read as ${value}; ${accepted}`,
        {
          drawer: fit.drawer,
          values: { corner, value },
        },
      ),
    );
  const gaps = gapPlaces(fit).flatMap((place): readonly GapReading[] => {
    const value = seen[place.corner]?.[readingAt(place)];
    if (value === undefined) return [];
    const wanted = fit.gaps[place.edge];
    if (!(value >= 0 && value <= LARGEST_LENGTH)) {
      faulty(place.corner, `${place.edge} gap`, value, `a gap is a length from 0 to ${LARGEST_LENGTH} mm`);
      return [];
    }
    if (wanted === null) {
      lapped.add(place.edge);
      return [];
    }
    return [{ ...place, seen: value, wanted }];
  });
  const proud = FRONT_CORNERS.flatMap((corner): readonly ProudReading[] => {
    const value = seen[corner]?.proud;
    if (value === undefined) return [];
    if (Math.abs(value) <= LARGEST_LENGTH) return [{ corner, seen: value }];
    faulty(
      corner,
      'reach out of the face',
      value,
      `write a length up to ${LARGEST_LENGTH} mm, with a minus where the front stands back`,
    );
    return [];
  });
  return { value: { gaps, proud, lapped }, findings };
}

/** Which of a corner's readings is the gap at this place. */
export const readingAt = ({ edge }: Pick<GapPlace, 'edge'>): 'side' | ('end' & keyof CornerReading) =>
  edge === 'left' || edge === 'right' ? 'side' : 'end';

/** `top left` */
export const cornerWords = (corner: FrontCorner): string =>
  corner.replace(/[A-Z]/, (letter) => ` ${letter.toLowerCase()}`);
