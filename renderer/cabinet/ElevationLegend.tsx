import type { Elevation } from '../../core/elevation/types.ts';

/** The lines and fills of the drawing, each with its word. */
export function ElevationLegend({ elevation }: { readonly elevation: Elevation }) {
  const frame = elevation.members.some(({ word }) => word.includes('panel')) ? 'panels' : 'frame';
  const entries = [
    ['cabinet-member', frame],
    ['cabinet-front-face', 'front, dialled in'],
    ['cabinet-box', 'box behind it'],
  ] as const;
  return (
    <ul className="cabinet-legend" aria-label="What the lines mean">
      {entries.map(([className, word]) => (
        <li key={word}>
          <svg width="32" height="16" aria-hidden="true">
            <rect className={className} x="1.5" y="1.5" width="29" height="13" />
          </svg>
          {word}
        </li>
      ))}
    </ul>
  );
}
