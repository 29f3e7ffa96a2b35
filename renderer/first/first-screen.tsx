import { renderToStaticMarkup } from 'react-dom/server';
import { createDesignSession } from '../../core/session/design-session.ts';
import { STROKE_FONT } from '../../shared/stroke-font.ts';
import { App } from '../app/App.tsx';
import { stageLoaded } from '../app/StagePanel.tsx';
import { BUILT_ROOM, BuiltPicture, type BuiltPictureProps } from '../seat/built-picture.ts';
import { FlatSeat } from '../seat/FlatSeat.tsx';
import { paletteOf } from '../seat/palette.ts';
import { setDesigned } from '../store/changes.ts';
import type { ThemeName } from '../store/types.ts';
import { useProgram } from '../store/use-program.ts';
import { FirstPicture } from './FirstPicture.tsx';
import type { DrawFirstScreen } from './first-screen-files.ts';

/**
 * The program's first screen: the demo order as it is first looked at. It is what the built page shows until the program
 * runs.
 */
export const firstScreen: DrawFirstScreen = async (tokens) => {
  const { draft, view } = useProgram.getState();
  await stageLoaded(view.stage);
  setDesigned(createDesignSession(STROKE_FONT).look(draft, 1));
  const drawn: BuiltPictureProps[] = [];
  const Picture = (props: BuiltPictureProps) => {
    drawn.push(props);
    return <FirstPicture {...props} />;
  };
  const html = renderToStaticMarkup(
    <BuiltPicture value={Picture}>
      <App />
    </BuiltPicture>,
  );
  const [seat] = drawn;
  if (seat === undefined) throw new Error('the first screen shows no seat');
  const pictureIn = (theme: ThemeName): string => {
    const palette = paletteOf(tokens[theme]);
    const svg = renderToStaticMarkup(
      <FlatSeat {...seat} palette={palette} room={BUILT_ROOM} onFrame={() => undefined} />,
    );
    return svg.replace('<svg', '<svg xmlns="http://www.w3.org/2000/svg"');
  };
  return { html, pictures: { light: pictureIn('light'), dark: pictureIn('dark') } };
};
