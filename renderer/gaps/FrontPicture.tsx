import { useId } from 'react';
import type { FrontPicture as Picture } from '../../core/gap-view/front-picture.ts';
import type { ReadPlace } from './CornerFields.tsx';

interface FrontPictureProps {
  readonly picture: Picture;
  /** The gap whose field is typed in: drawn thicker. */
  readonly reached: ReadPlace | null;
}

/** The front in its opening, to scale but for its gaps. */
export function FrontPicture({ picture, reached }: FrontPictureProps) {
  const title = useId();
  const { view, front, members, gaps } = picture;
  return (
    <svg
      className="gaps-front"
      role="img"
      aria-labelledby={title}
      viewBox={`${view.x} ${view.y} ${view.w} ${view.h}`}
    >
      <title id={title}>
        The front, seen by someone facing the closed cabinet; its gaps are drawn much too wide.
      </title>
      <rect className="gaps-front-face" x={front.x} y={front.y} width={front.w} height={front.h} />
      {members.map(({ edge, laps, from, to }) => (
        <line
          key={edge}
          className={laps ? 'gaps-member gaps-member-hidden' : 'gaps-member'}
          x1={from.x}
          y1={from.y}
          x2={to.x}
          y2={to.y}
        />
      ))}
      {gaps.map(({ edge, corner, from, to }) => (
        <line
          key={`${edge} ${corner}`}
          className={
            reached?.edge === edge && reached.corner === corner ? 'gaps-read gaps-read-reached' : 'gaps-read'
          }
          x1={from.x}
          y1={from.y}
          x2={to.x}
          y2={to.y}
        />
      ))}
    </svg>
  );
}
