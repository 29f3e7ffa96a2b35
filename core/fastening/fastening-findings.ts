import type { Finding, Place } from '../findings/finding.ts';
import { warning } from '../findings/make.ts';
import { drawerName } from '../fit/drawer-name.ts';
import type { DrawerFit } from '../fit/types.ts';
import type { ShopStandard } from '../rules/types.ts';
import { formatLength } from '../units/format-length.ts';
import { speciesName } from './drawer-context.ts';
import { placeName } from './place-name.ts';
import type { Fastening, Impossible, Margin } from './types.ts';
import { worstMiss } from './worst-miss.ts';

/** What is to be said of a drawer's fastening. All are warnings: its jigs can be cut all the same. */
export function fasteningFindings(fastening: Fastening, standard: ShopStandard): readonly Finding[] {
  const { fit, impossible, screw, withdrawal } = fastening;
  const say = (code: string, words: string, values: Finding['values'], column?: string): Finding =>
    warning(`fastening/${code}`, told(fit, words), placeOf(fit, column), values);
  const found: Finding[] = [];

  const species = speciesName(fit, standard);
  if (!Object.hasOwn(standard.species, species)) {
    found.push(
      say(
        'species',
        `the standard has no wood called "${species}", so its screws are reckoned in the lightest wood that it has; take one of ${Object.keys(standard.species).join(', ')}.`,
        { species },
        'species',
      ),
    );
  }
  const worst = worstMiss(impossible);
  if (screw === null) {
    found.push(
      say(
        'none',
        `no screw in stock fits the front${worst === undefined ? '.' : `. ${missWords(worst, fit)}`}`,
        missValues(worst),
      ),
    );
    return found;
  }
  if (worst !== undefined) {
    const all = fastening.places.length + impossible.length;
    found.push(
      say(
        'place',
        `${impossible.length} of its ${all} screws have no place, and the front has the other ${fastening.places.length} only. ${missWords(worst, fit)}`,
        { missing: impossible.length, ...missValues(worst) },
      ),
    );
  }
  if (withdrawal.capacity < withdrawal.pull) {
    const [holds, asked] = [Math.floor(withdrawal.capacity), Math.ceil(withdrawal.pull)];
    found.push(
      say(
        'withdrawal',
        `its ${fastening.places.length} screws (${screw.name}) hold ${holds} N after the safety factor, and the standard asks for ${asked} N; longer or thicker screws, a denser wood or closer spacing hold more.`,
        { ...withdrawal },
      ),
    );
  }
  const off = fastening.pullHoles.centers.filter(
    ({ x, y }) => x <= 0 || y <= 0 || x >= fit.frontW || y >= fit.frontH,
  );
  if (off.length > 0) {
    found.push(
      say(
        'pull-off-front',
        `${off.length} of the pull's holes would be outside the front of ${formatLength(fit.frontW, fit.unit)} x ${formatLength(fit.frontH, fit.unit)}; give a smaller centre distance, or one pull.`,
        { holes: off.length },
        'pull',
      ),
    );
  }
  return found;
}

const told = ({ drawer }: DrawerFit, words: string): string =>
  `Drawer ${drawerName(drawer)}${drawer.row > 0 ? `, row ${drawer.row}` : ''}: ${words}`;

const placeOf = ({ drawer }: DrawerFit, column: string | undefined): Place => ({
  ...(drawer.row > 0 ? { row: drawer.row } : {}),
  ...(column === undefined ? {} : { column }),
  drawer: drawerName(drawer),
});

/** The nearest miss and its cures, in whole sentences. */
function missWords(place: Impossible, fit: DrawerFit): string {
  const [worst] = place.margins;
  const cures =
    place.cures.length > 0
      ? place.cures.join(' ')
      : 'No single change of screw, guide, driver, frame, front or box side cures it.';
  const miss = worst === undefined ? '' : ` ${marginWords(worst, fit)}`;
  return `In ${placeName(place)}, ${place.screw.name} comes nearest.${miss} ${cures}`;
}

function marginWords({ against, is, least }: Margin, fit: DrawerFit): string {
  const [there, asked] = [formatLength(Math.abs(is), fit.unit), formatLength(least, fit.unit)];
  return is < 0
    ? `It goes ${there} past ${against}, and must keep ${asked} from it.`
    : `There is ${there} at ${against}, where ${asked} must be.`;
}

const missValues = (place: Impossible | undefined): Finding['values'] => {
  const worst = place?.margins[0];
  return worst === undefined ? {} : { limit: worst.limit, is: worst.is, least: worst.least };
};
