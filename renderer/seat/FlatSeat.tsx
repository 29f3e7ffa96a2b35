import { useEffect, useMemo } from 'react';
import type { Point } from '../../core/geometry/types.ts';
import { directionsOf } from '../../core/scene/directions.ts';
import { inPicture } from '../../core/scene/line-faces.ts';
import type { Painted } from '../../core/scene/painted-scene.ts';
import { paintedSeat, type OverMark, type SeatMark } from '../../core/scene/painted-seat.ts';
import type { Material } from '../../core/scene/types.ts';
import { lit } from './colour.ts';
import type { Hatch } from './hatch.ts';
import { lineLook, type LineName } from './line-looks.ts';
import { pixelsPerMm } from './look.ts';
import { CONTACT_HATCH, CUT_HATCH, type Palette } from './palette.ts';
import type { PictureProps } from './space/SpaceSeat.tsx';

export type FlatSeatProps = Omit<PictureProps, 'onLost'>;

/** Pixels of a dash and of a gap. */
const DASH: Partial<Record<LineName, number>> = { 'contact behind': 6 };

/** A face is filled a little beyond its border, or what it hides would shine through between it and the next. */
const SEAM = 0.75;

/** A seat drawn without depth, the farthest first: until the picture in space is there, or where there can be none. */
export function FlatSeat({ scene, sight, showing, palette, room, onFrame }: FlatSeatProps) {
  const { azimuth, elevation, focus } = sight;
  const seen = useMemo(() => directionsOf({ azimuth, elevation }), [azimuth, elevation]);
  const painted = useMemo(() => paintedSeat(scene, showing, seen), [scene, showing, seen]);
  const by = pixelsPerMm(room, sight);
  const middle = inPicture(focus, seen);
  useEffect(onFrame);
  const place = `translate(${room.width / 2} ${room.height / 2}) scale(${by} ${-by}) translate(${-middle.x} ${-middle.y})`;
  return (
    <svg
      className="seat-flat"
      width={room.width}
      height={room.height}
      viewBox={`0 0 ${room.width} ${room.height}`}
      aria-hidden="true"
    >
      <defs>
        <HatchPattern id="seat-contact" hatch={CONTACT_HATCH} ink={palette.contact} by={by} />
        {showing.cutAt === null
          ? null
          : MATERIALS.map((material) => (
              <HatchPattern
                key={material}
                id={`seat-cut-${material}`}
                hatch={CUT_HATCH[material]}
                ink={palette.line}
                ground={palette.fill[material]}
                by={by}
              />
            ))}
      </defs>
      <g transform={place} fill="none" strokeLinecap="round" strokeLinejoin="round" fillRule="evenodd">
        {/* The things of one drawing have no other name than their place. */}
        {painted.items.map((item, index) => (
          // oxlint-disable-next-line react/no-array-index-key
          <Item key={index} item={item} palette={palette} by={by} />
        ))}
        <path d={painted.touching.map(ringsPath).join('')} fill="url(#seat-contact)" />
        {OVER.map((mark) => (
          <Strokes
            key={mark}
            mark={mark}
            lines={painted.over.filter((one) => one.mark === mark).map(({ ends }) => ends)}
            palette={palette}
            by={by}
          />
        ))}
      </g>
    </svg>
  );
}

const MATERIALS: readonly Material[] = ['front', 'box', 'jig', 'key', 'pin', 'bit', 'screw'];
const OVER: readonly OverMark[] = ['contact behind', 'dimension', 'zone', 'tool'];

interface Drawn {
  readonly palette: Palette;
  /** Pixels for a mm. */
  readonly by: number;
}

function Item({ item, palette, by }: Drawn & { readonly item: Painted<SeatMark> }) {
  if (item.kind === 'line') return <Strokes mark={item.mark} lines={[item.ends]} palette={palette} by={by} />;
  if (item.kind === 'borders')
    return <Strokes mark={item.isCut ? 'cut' : 'edge'} lines={item.strokes} palette={palette} by={by} />;
  const { material, light, rings, isCut } = item;
  const fill = isCut ? `url(#seat-cut-${material})` : lit(palette.fill[material], light);
  return <path d={ringsPath(rings)} fill={fill} stroke={fill} strokeWidth={SEAM / by} />;
}

interface StrokesProps extends Drawn {
  readonly mark: LineName;
  readonly lines: readonly (readonly Point[])[];
}

function Strokes({ mark, lines, palette, by }: StrokesProps) {
  if (lines.length === 0) return null;
  const d = lines.map((points) => `M${points.map(written).join('L')}`).join('');
  return <path d={d} {...strokeOf(mark, palette, by)} />;
}

function strokeOf(mark: LineName, palette: Palette, by: number) {
  const { color, width } = lineLook(mark, palette);
  const dash = DASH[mark];
  return {
    stroke: color,
    strokeWidth: width / by,
    ...(dash === undefined ? {} : { strokeDasharray: dash / by }),
  };
}

interface HatchPatternProps {
  readonly id: string;
  readonly hatch: Hatch;
  readonly ink: string;
  readonly ground?: string;
  readonly by: number;
}

/** Degrees from upright strokes, y up. */
const TURN = { rising: -45, falling: 45, level: 90 } as const;

/** Strokes of the same size on the screen however large the seat is drawn. */
function HatchPattern({ id, hatch: { way, every, stroke }, ink, ground, by }: HatchPatternProps) {
  return (
    <pattern
      id={id}
      width={every}
      height={every}
      patternUnits="userSpaceOnUse"
      patternTransform={`rotate(${TURN[way]}) scale(${1 / by})`}
    >
      {ground === undefined ? null : <rect width={every} height={every} fill={ground} />}
      <rect width={stroke} height={every} fill={ink} />
    </pattern>
  );
}

const ringsPath = (rings: readonly (readonly Point[])[]): string =>
  rings.map((ring) => `M${ring.map(written).join('L')}Z`).join('');

/** mm, finer than any pixel. */
const written = ({ x, y }: Point): string => `${x.toFixed(2)} ${y.toFixed(2)}`;
