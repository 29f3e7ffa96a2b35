import type { Finding, Outcome } from '../../findings/finding.ts';
import { error, warning } from '../../findings/make.ts';
import type { ClosedContour } from '../../geometry/types.ts';
import { mmText } from '../../units/mm-text.ts';
import { bridgedOutline } from './bridges.ts';
import { tabMarks } from './tab-marks.ts';
import { LEAST_TABS, tabLength, tabPlaces } from './tab-places.ts';
import type { Tabs, TabSettings } from './types.ts';

/**
 * Tabs that hold a part in its sheet, on straight stretches of its outline and away from corners; null where the
 * outline has no room for two. `name` is what findings call the part.
 *
 * `marks` (usual) breaks nothing: the outline stays one closed contour. `bridges` gives open stretches instead, so
 * the rule of closed contours does not hold for them; the finding `sheets/open-outline` says so.
 *
 * Findings: `sheets/tabs` (error: a setting makes no sense), `sheets/no-tabs` (warning: no room for two),
 * `sheets/open-outline` (warning, with `bridges`).
 */
export function addTabs(
  outline: ClosedContour,
  settings: TabSettings,
  mode: Tabs['mode'],
  name: string,
): Outcome<Tabs | null> {
  const { width, every, fromCorner, kerf } = settings;
  if (
    !(width > 0 && every > 0 && fromCorner >= 0 && kerf >= 0 && Number.isFinite(width + fromCorner + kerf))
  ) {
    return {
      value: null,
      findings: [
        error(
          'sheets/tabs',
          `Tabs ${width} mm wide every ${every} mm, ${fromCorner} mm from corners, for a cut of ${kerf} mm: width and distance must be above 0, the others 0 or more.`,
          {},
          { width, every, fromCorner, kerf },
        ),
      ],
    };
  }
  if (outline.kind === 'circle') return { value: null, findings: [noRoom(name, settings)] };
  const places = tabPlaces(outline, settings);
  if (places.length < LEAST_TABS) return { value: null, findings: [noRoom(name, settings)] };
  if (mode === 'marks') {
    return { value: { mode, outline, marks: tabMarks(places, settings) }, findings: [] };
  }
  const stretches = bridgedOutline(outline, places, settings);
  return { value: { mode, stretches }, findings: [openOutline(name, stretches.length)] };
}

const noRoom = (name: string, settings: TabSettings): Finding =>
  warning(
    'sheets/no-tabs',
    `The outline of ${name} has no two straight stretches of ${mmText(tabLength(settings) + 2 * settings.fromCorner)} for tabs; hold it with tape or screws, or make tabs narrower.`,
    {},
    { part: name, width: settings.width, fromCorner: settings.fromCorner },
  );

const openOutline = (name: string, stretches: number): Finding =>
  warning(
    'sheets/open-outline',
    `The outline of ${name} is cut in ${stretches} open stretches, so that bridges hold it; break it out and clean the edge.`,
    {},
    { part: name, stretches },
  );
