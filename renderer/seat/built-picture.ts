import { createContext, type ComponentType } from 'react';
import type { SeatScene } from '../../core/scene/types.ts';
import type { FlatSeatProps } from './FlatSeat.tsx';
import { sceneMark } from './scene-mark.ts';
import type { SeatLabel } from './seat-labels.ts';

/** Where the picture is that a page is built with, in a window of 1440 by 900 pixels. */
export const BUILT_ROOM = { width: 706, height: 492, rem: 16 } as const;

export interface BuiltPictureProps extends Pick<FlatSeatProps, 'scene' | 'sight' | 'showing'> {
  readonly labels: readonly SeatLabel[];
}

/** What shows a seat where nothing can be measured: in the page as it is built. Null wherever the program runs. */
export const BuiltPicture = createContext<ComponentType<BuiltPictureProps> | null>(null);

let kept: { readonly picture: Element; readonly mark: string } | null = null;

/** Keeps the picture that the page was built with, before the rest of it is taken down. */
export function keepBuiltPicture(page: ParentNode): void {
  const picture = page.querySelector('[data-scene]');
  kept = picture === null ? null : { picture, mark: picture.getAttribute('data-scene') ?? '' };
}

/** That picture, if it shows this scene and has not been dropped. */
export const builtPictureOf = (scene: SeatScene): Element | null =>
  kept !== null && kept.mark === sceneMark(scene) ? kept.picture : null;

/** It is drawn by the program from now on. */
export const dropBuiltPicture = (): void => {
  kept = null;
};
