import type { Finding } from '../findings/finding.ts';
import { layOutCabinets, placedFront, type PlacedDrawer } from '../fit/layout.ts';
import type { ShopStandard } from '../rules/types.ts';
import { columnsOf } from './columns.ts';
import { dimensionsOf } from './dimensions.ts';
import { frontPieces } from './front-pieces.ts';
import { membersOf } from './members.ts';
import { outsideOf } from './outside.ts';
import { placeBox } from './place-box.ts';
import { stateOf } from './row-state.ts';
import type { Elevation, RowFit } from './types.ts';

export interface ElevationAbout {
  readonly construction: ShopStandard['construction'];
  readonly findings: readonly {
    readonly rowId: string | null;
    readonly finding: Pick<Finding, 'severity'>;
  }[];
}

/**
 * A closed cabinet as someone facing it sees it, from the fits of its drawers: members, openings, fronts
 * where they end up after dialling in, boxes behind them, gaps and reveals. Lengths in mm, y down.
 *
 * The fits are all of one cabinet, one at least.
 */
export function cabinetElevation(rows: readonly RowFit[], about: ElevationAbout): Elevation {
  // Copies, so that each fit is one row's even if two rows were given the same object.
  const own = rows.map(({ rowId, fit }) => ({ rowId, fit: { ...fit } }));
  const [layout, ...others] = layOutCabinets(own.map(({ fit }) => fit));
  const [first] = own;
  if (layout === undefined || first === undefined || others.length > 0) {
    throw new RangeError(`cabinetElevation: drawers of ${others.length + 1} cabinets`);
  }
  const rowIds = new Map(own.map(({ rowId, fit }) => [fit, rowId]));
  const rowIdOf = ({ fit }: PlacedDrawer): string => rowIds.get(fit) ?? '';
  const columns = columnsOf(layout);
  const outside = outsideOf(columns);
  const { room, cabinet } = first.fit.drawer;
  return {
    key: layout.key,
    name: [room, cabinet].filter((word) => word !== undefined && word !== '').join(' / '),
    outside,
    members: membersOf(columns, outside, about.construction),
    drawers: columns.flatMap(({ drawers }) =>
      drawers.map((drawer) => {
        const front = placedFront(drawer);
        const rowId = rowIdOf(drawer);
        return {
          rowId,
          name: drawer.fit.drawer.drawer,
          qty: drawer.fit.drawer.qty,
          state: stateOf(rowId, about.findings),
          opening: drawer.opening,
          front,
          box: placeBox(drawer),
          pieces: frontPieces(front, drawer.fit.drawer.front),
        };
      }),
    ),
    dimensions: dimensionsOf({ columns, outside, rowIdOf }),
  };
}
