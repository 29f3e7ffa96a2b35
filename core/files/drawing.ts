import type { Operation } from '../machine/operations.ts';
import type { Feature } from '../parts/types.ts';
import type { LayerStyle, MachineProfile } from '../machine/profile.ts';

/** What a cut file shows: features in mm, with the layer of each operation. */
export interface Drawing {
  readonly features: readonly Feature[];
  readonly layers: Readonly<Record<Operation, LayerStyle>>;
  /** Outlines may be open, for bridges hold the parts in their sheet. Absent: they may not. */
  readonly openOutlines?: boolean;
}

export type DxfSettings = MachineProfile['dxf'];

/** What an export says of itself (requirement EXP). Lengths in mm. */
export interface ExportReport {
  readonly unit: 'mm' | 'in';
  readonly entities: number;
  /** Total length of all contours on cut layers. */
  readonly cutLength: number;
  readonly engraveLength: number;
  /** Must be 0 but for the outlines of parts that bridges hold. */
  readonly openContoursOnCutLayers: number;
  readonly duplicatesRemoved: number;
  readonly extents: {
    readonly minX: number;
    readonly minY: number;
    readonly maxX: number;
    readonly maxY: number;
  };
}
