/** What an independent reader saw in a DXF file; lengths in the file's unit. */
export interface ReadDxf {
  readonly layers: Readonly<Record<string, number>>;
  readonly entities: readonly ReadEntity[];
  readonly insunits: number;
  readonly measurement: number;
  readonly extents: readonly [minX: number, minY: number, maxX: number, maxY: number];
}

export interface ReadEntity {
  readonly type: string;
  readonly layer: string;
  readonly closed: boolean;
  /** [x, y, bulge] */
  readonly vertices: readonly (readonly [number, number, number])[];
  /** [x, y, radius] of a circle */
  readonly circle: readonly [number, number, number] | null;
}
