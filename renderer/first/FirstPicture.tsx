import { BUILT_ROOM, type BuiltPictureProps } from '../seat/built-picture.ts';
import { LabelWords } from '../seat/LabelLayer.tsx';
import { placedLabels } from '../seat/placed-labels.ts';
import { sceneMark } from '../seat/scene-mark.ts';
import type { SeatLabel } from '../seat/seat-labels.ts';
import { firstFile } from './first-screen-files.ts';

/** The picture of a seat that a page is built with, and its words over it; larger or smaller as its place is. */
export function FirstPicture({ scene, sight, labels }: BuiltPictureProps) {
  const sized = labels.map((label) => ({ label, ...sizeOf(label) }));
  const placed = placedLabels(sized, sight, BUILT_ROOM, []);
  return (
    <div className="first-picture">
      <picture data-scene={sceneMark(scene)}>
        <source srcSet={sourceOf('dark')} media="(prefers-color-scheme: dark)" />
        <img srcSet={sourceOf('light')} alt="" {...TIMED} />
      </picture>
      <svg viewBox={`0 0 ${BUILT_ROOM.width} ${BUILT_ROOM.height}`}>
        {placed.map(({ label, leader }) =>
          label.kind === 'dimension' ? <path key={label.id} d={leader} /> : null,
        )}
        {placed.map(({ label, x, y, width, height }) => (
          <foreignObject key={label.id} x={x} y={y} width={2 * width} height={height + LOOSE}>
            <LabelWords label={label} />
          </foreignObject>
        ))}
      </svg>
    </div>
  );
}

/** A browser tells when it was on the screen; React has no word for it. */
const TIMED = { elementtiming: 'first-picture' };

/** For screens of one and of two dots to a pixel; the build puts files in place of the names. */
const sourceOf = (theme: 'light' | 'dark'): string =>
  [1, 2].map((dots) => `${firstFile(theme, dots)} ${dots}x`).join(', ');

/** px, of the words as `seat.css` sets them: a letter of the system's font is about so wide for its size. */
const [WORDS, FIGURE, LETTER, RIM] = [14, 22, 0.6, 16];

/** px, for what is larger than it was taken to be. */
const LOOSE = 12;

const sizeOf = ({ words, figure = '' }: SeatLabel) => ({
  width: RIM + LETTER * Math.max(WORDS * words.length, FIGURE * figure.length),
  height: 1.35 * WORDS + (figure === '' ? 0 : 1.1 * FIGURE) + 4,
});
