import type { Finding, Outcome } from '../../findings/finding.ts';
import { quoteText } from '../../order/quote-text.ts';
import { EDGES, type Edge } from '../../order/types.ts';
import type { ShopStandard } from '../../rules/types.ts';
import type { Air, Species } from '../../rules/wood-types.ts';
import { SAME_LENGTH } from '../../units/tolerances.ts';
import { canHang } from '../can-hang.ts';
import { fitWarning } from '../fit-finding.ts';
import type { DrawerFit } from '../types.ts';
import { checkSeasons } from './check-seasons.ts';
import { moistureContent } from './moisture.ts';
import { dimensionalChange } from './movement.ts';
import { movingWood } from './moving-wood.ts';
import { edgeGrowth, gapClosing } from './season-gaps.ts';
import type { Season, SeasonBudget } from './types.ts';

/**
 * How a front and its gaps move between the driest and the dampest air that it lives in, from the air that it
 * is fitted in, and the gaps that would not close. The value is null when the standard lacks the
 * species, and for a fit that has no box or no front.
 */
export function seasonDrawer(fit: DrawerFit, standard: ShopStandard): Outcome<SeasonBudget | null> {
  if (!canHang(fit)) return { value: null, findings: [] };
  const { wood } = standard.front;
  const name = fit.drawer.species ?? wood.species.value;
  const species = Object.hasOwn(standard.species, name) ? standard.species[name] : undefined;
  const moving = movingWood(fit, wood);
  const still = moving.width === 0 && moving.height === 0;
  if (species === undefined && !still)
    return { value: null, findings: [unknownSpecies(fit, name, standard)] };
  const fittedAt = moistureOf(wood.shop);
  const coefficient = species === undefined ? 0 : coefficientOf(species, wood.sawn.value);
  const season = (air: Air): Season => {
    const moisture = moistureOf(air);
    const width = dimensionalChange(moving.width, coefficient, fittedAt, moisture);
    const height = dimensionalChange(moving.height, coefficient, fittedAt, moisture);
    const outward = edgeGrowth(fit, { width, height });
    const gap = (edge: Edge) => {
      const fitted = fit.gaps[edge];
      return fitted === null ? null : fitted - gapClosing(edge, fit, outward);
    };
    return {
      moisture,
      frontW: fit.frontW + width,
      frontH: fit.frontH + height,
      gaps: { left: gap('left'), right: gap('right'), top: gap('top'), bottom: gap('bottom') },
    };
  };
  const dry = season(wood.dry);
  const damp = season(wood.damp);
  const smallest = standard.limits.smallestGap.value;
  const recommend = (edge: Edge): number | null => {
    const [fitted, least] = [fit.gaps[edge], leastGap(edge, dry, damp)];
    if (fitted === null || least === null || least >= smallest - SAME_LENGTH) return null;
    return fitted + (smallest - least);
  };
  const value: SeasonBudget = {
    fit,
    fittedAt,
    moving,
    dry,
    damp,
    recommended: {
      left: recommend('left'),
      right: recommend('right'),
      top: recommend('top'),
      bottom: recommend('bottom'),
    },
  };
  return { value, findings: EDGES.flatMap((edge) => checkSeasons(edge, value, { name, smallest })) };
}

/** The smaller of a gap's sizes in dry and damp air. */
function leastGap(edge: Edge, dry: Season, damp: Season): number | null {
  const [inDry, inDamp] = [dry.gaps[edge], damp.gaps[edge]];
  return inDry === null || inDamp === null ? null : Math.min(inDry, inDamp);
}

const moistureOf = ({ humidity, temperature }: Air): number =>
  moistureContent(humidity.value, temperature.value);

const coefficientOf = ({ radial, tangential }: Species, sawn: 'flatsawn' | 'quartersawn'): number =>
  (sawn === 'quartersawn' ? radial : tangential).value;

function unknownSpecies({ drawer }: DrawerFit, name: string, { species }: ShopStandard): Finding {
  return fitWarning(
    'species-unknown',
    `the movement of its front over the year is not known: the shop standard has no species ${quoteText(name)}; it has ${Object.keys(species).join(', ') || 'none'}`,
    { drawer, column: 'species', values: { name } },
  );
}
