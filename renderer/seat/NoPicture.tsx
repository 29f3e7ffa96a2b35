import type { LengthUnit } from '../../core/order/types.ts';
import { dimensionName, dimensionText } from '../../core/scene/dimensions.ts';
import type { SeatScene } from '../../core/scene/types.ts';

interface NoPictureProps {
  readonly scene: SeatScene;
  readonly unit: LengthUnit;
  readonly onRetry: () => void;
}

/** What is lost where nothing can be drawn in space, and what the seat is in words. */
export function NoPicture({ scene, unit, onRetry }: NoPictureProps) {
  return (
    <section className="seat-lost" aria-label="The seat in words">
      <p role="alert">
        <strong>The picture of the seat cannot be drawn here.</strong> This window has no WebGL, or has just
        lost it. Turning, cutting and taking apart the seat are not available. The cabinet and part views, the
        order and the files carry on as before.
      </p>
      <button type="button" onClick={onRetry}>
        Try again
      </button>
      <h3>
        {scene.jig.id} {scene.jig.kind} on {scene.drawer}
      </h3>
      <ul>
        {scene.dimensions.map((dimension) => (
          <li key={dimension.id}>
            {dimensionName(dimension)} <strong>{dimensionText(dimension, unit)}</strong>
          </li>
        ))}
      </ul>
      <ol>
        {scene.steps.map(({ id, title, words }) => (
          <li key={id}>
            <strong>{title}.</strong> {words}
          </li>
        ))}
      </ol>
    </section>
  );
}
