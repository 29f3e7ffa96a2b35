import { useEffect, useMemo, useState } from 'react';
import type { SeatScene } from '../../core/scene/types.ts';
import { builtPictureOf, dropBuiltPicture } from './built-picture.ts';
import type { Palette } from './palette.ts';

/** The picture that the page was built with, for as long as it is what would be drawn; null from then on. */
export function useKeptPicture(scene: SeatScene, palette: Palette, isUntouched: boolean): Element | null {
  const [first] = useState(palette);
  const isAsBuilt = isUntouched && palette === first;
  const picture = useMemo(() => (isAsBuilt ? builtPictureOf(scene) : null), [isAsBuilt, scene]);
  useEffect(() => {
    if (picture === null) dropBuiltPicture();
  }, [picture]);
  useEffect(() => dropBuiltPicture, []);
  return picture;
}
