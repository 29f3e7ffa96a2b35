import { useCallback } from 'react';
import type { Plane } from 'three';
import type { Vec3 } from '../../../core/jigs/types.ts';
import { ringLines } from '../../../core/scene/line-faces.ts';
import type { SceneContact } from '../../../core/scene/types.ts';
import { faceMesh, linesGeometry } from './geometry.ts';
import { Hatched } from './Hatched.tsx';
import { Lines } from './Lines.tsx';
import { lineLook } from '../line-looks.ts';
import { CONTACT_HATCH, type Palette } from '../palette.ts';
import { useDisposed } from './useDisposed.ts';

interface ContactMarkProps {
  readonly contact: SceneContact;
  readonly offset: Vec3;
  readonly palette: Palette;
  readonly clip: readonly Plane[];
}

type Shape = SceneContact['shape'];

const outlineOf = (shape: Shape) =>
  linesGeometry(shape.kind === 'line' ? [shape.line] : [shape.outline, ...shape.holes].flatMap(ringLines));

/**
 * Faces that touch: strokes, and a heavy outline. They lie between two solids, so they are seen through what
 * stands before them, there with a dashed outline.
 */
export function ContactMark({ contact, offset, palette, clip }: ContactMarkProps) {
  const { shape } = contact;
  const outline = useDisposed(shape, outlineOf);
  return (
    <group position={[offset.x, offset.y, offset.z]}>
      {shape.kind === 'area' ? <ContactFace shape={shape} palette={palette} clip={clip} /> : null}
      <Lines
        geometry={outline}
        {...lineLook(shape.kind === 'line' ? 'contact line' : 'contact', palette)}
        clip={clip}
      />
      <Lines geometry={outline} {...lineLook('contact behind', palette)} over dash={2} clip={clip} />
    </group>
  );
}

interface ContactFaceProps {
  readonly shape: Extract<Shape, { readonly kind: 'area' }>;
  readonly palette: Palette;
  readonly clip: readonly Plane[];
}

function ContactFace({ shape, palette, clip }: ContactFaceProps) {
  const mesh = useDisposed(
    shape,
    useCallback((of: ContactFaceProps['shape']) => faceMesh(of.outline, of.holes), []),
  );
  return (
    <Hatched geometry={mesh} ink={palette.contact} ground={null} hatch={CONTACT_HATCH} over clip={clip} />
  );
}
