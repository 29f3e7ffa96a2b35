import type { KeyboardEvent } from 'react';
import type { Point } from '../../core/geometry/types.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import { letterOf } from '../../core/screw-section/letters.ts';
import type { ScrewSection, SectionDimension, SectionPoint } from '../../core/screw-section/types.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { roundTo } from '../../core/units/tolerances.ts';
import { DrawingSurface } from '../drawing/DrawingSurface.tsx';
import { drawingKey } from '../drawing/keys.ts';
import type { Projection } from '../drawing/projection.ts';
import { useDrawing } from '../drawing/useDrawing.ts';
import { ZoomButtons } from '../drawing/ZoomButtons.tsx';

/** Room in rem about the section for its figures. */
const MARGINS = { left: 5, right: 2, top: 1, bottom: 3 };

interface ScrewDrawingProps {
  readonly section: ScrewSection;
  readonly unit: LengthUnit;
}

/** A section through a screw to scale: front, box, screw, bit and driver, with its limits dimensioned. */
export function ScrewDrawing({ section, unit }: ScrewDrawingProps) {
  const [[left, right], [low, high]] = [section.extents.in, section.extents.up];
  const drawing = useDrawing({ x: left, y: low, w: right - left, h: high - low, yUp: true }, MARGINS);
  const { projection, room } = drawing;
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (drawingKey(event.key, drawing)) event.preventDefault();
  };
  return (
    <div className="screw-drawing">
      <DrawingSurface
        drawing={drawing}
        focusable
        label={`Section through the screw, ${section.title}, to scale; the limits are in the table below. + and - change the size, 0 shows all, arrows move.`}
        onKeyDown={onKeyDown}
      >
        {projection === null || room === null ? null : (
          <g aria-hidden="true">
            {section.shapes.map(({ id, material, outline }) => (
              <path
                key={id}
                className={`screw-shape screw-${material.replace(' ', '-')}`}
                d={outlinePath(outline, projection)}
              />
            ))}
            {section.tools.map(({ id, part, outline }) => (
              <path key={id} className={`screw-tool screw-${part}`} d={outlinePath(outline, projection)} />
            ))}
            <Words section={section} projection={projection} rem={room.rem} />
            {section.dimensions.map((dimension, index) => (
              <LimitMark
                key={`${dimension.limit} ${dimension.from.in} ${dimension.to.in}`}
                dimension={dimension}
                letter={letterOf(section, dimension.limit) ?? ''}
                index={index}
                projection={projection}
                rem={room.rem}
                unit={unit}
              />
            ))}
          </g>
        )}
      </DrawingSurface>
      <div className="screw-zoom">
        <ZoomButtons drawing={drawing} />
      </div>
    </div>
  );
}

const pixel = (point: SectionPoint, projection: Projection): Point =>
  projection.toScreen({ x: point.in, y: point.up });

const outlinePath = (outline: readonly SectionPoint[], projection: Projection): string =>
  `M ${outline.map((point) => `${pixel(point, projection).x} ${pixel(point, projection).y}`).join(' L ')} Z`;

/** What the cut things are called, each in the middle of it. */
function Words({ section, projection, rem }: { section: ScrewSection; projection: Projection; rem: number }) {
  return section.shapes
    .filter(({ material }) => material !== 'groove')
    .map(({ id, material, outline }) => {
      const inner = Math.max(...outline.map((point) => point.in));
      const [low, high] = [
        Math.min(...outline.map(({ up }) => up)),
        Math.max(...outline.map(({ up }) => up)),
      ];
      const outer = Math.min(...outline.map((point) => point.in));
      const narrow = inner - outer < 22;
      const at = pixel({ in: narrow ? (inner + outer) / 2 : inner - 1, up: (low + high) / 2 }, projection);
      return (
        <text
          key={id}
          className="drawing-words screw-words"
          x={at.x - (narrow ? 0 : 0.3 * rem)}
          y={at.y}
          textAnchor={narrow ? 'middle' : 'end'}
          dominantBaseline="central"
          {...(narrow ? { transform: `rotate(-90 ${at.x} ${at.y})` } : {})}
        >
          {id.startsWith('wood ') ? id.slice(5) : material}
        </text>
      );
    });
}

interface LimitMarkProps {
  readonly dimension: SectionDimension;
  readonly letter: string;
  readonly index: number;
  readonly projection: Projection;
  readonly rem: number;
  readonly unit: LengthUnit;
}

/** A limit between two points, with its letter and its figure beside the line; a failing one is marked. */
function LimitMark({ dimension, letter, index, projection, rem, unit }: LimitMarkProps) {
  const [a, b] = [pixel(dimension.from, projection), pixel(dimension.to, projection)];
  const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const along = { x: (b.x - a.x) / long, y: (b.y - a.y) / long };
  const tick = 0.4 * rem;
  const bar = (at: Point): string =>
    `M ${at.x - along.y * tick} ${at.y + along.x * tick} L ${at.x + along.y * tick} ${at.y - along.x * tick}`;
  const upright = Math.abs(along.y) > Math.abs(along.x);
  const place = upright
    ? { x: Math.max(a.x, b.x) + 0.5 * rem, y: (a.y + b.y) / 2, anchor: 'start' as const }
    : { x: (a.x + b.x) / 2, y: a.y + (index % 2 === 0 ? -0.8 : 0.9) * rem, anchor: 'middle' as const };
  return (
    <g className={dimension.fails ? 'drawing-dimension drawing-wrong' : 'drawing-dimension'}>
      <path d={`M ${a.x} ${a.y} L ${b.x} ${b.y} ${bar(a)} ${bar(b)}`} />
      <text x={place.x} y={place.y} textAnchor={place.anchor} dominantBaseline="central">
        {dimension.fails ? '✕ ' : ''}
        {letter} {formatLength(roundTo(dimension.is, 2), unit)}
      </text>
    </g>
  );
}
