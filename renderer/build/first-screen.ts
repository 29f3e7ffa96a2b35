import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import sharp from 'sharp';
import { createServer, type Plugin } from 'vite';
import { firstFile, type DrawFirstScreen, type FirstScreen } from '../first/first-screen-files.ts';
import { inTheme, type Tokens } from '../seat/tokens.ts';
import type { ThemeName } from '../store/types.ts';
import { readConstants } from './read-constants.ts';

const RENDERER = resolve(import.meta.dirname, '..');

/** Where the page shows the program. */
const ROOT = '<div id="root">';

/** Dots per inch of a picture that is drawn with one dot for a pixel. */
const DPI = 72;

/**
 * Writes the program's first screen into the page, for as long as the program is being loaded. Its picture is in
 * pixels: to draw hundreds of faces takes a browser without a graphics card a quarter of a second.
 */
export function writeFirstScreen(): Plugin {
  let screen = '';
  return {
    name: 'write-first-screen',
    apply: 'build',
    async buildStart() {
      const { html, pictures } = await renderFirstScreen();
      screen = html;
      for (const theme of ['light', 'dark'] as const) {
        for (const dots of [1, 2]) {
          const drawn = sharp(Buffer.from(pictures[theme]), { density: dots * DPI });
          // oxlint-disable-next-line no-await-in-loop -- two themes, two sizes
          const source = await drawn.png({ palette: true, effort: 10 }).toBuffer();
          this.emitFile({ type: 'asset', name: firstFile(theme, dots), source });
        }
      }
    },
    transformIndexHtml: {
      order: 'post',
      handler(html, { bundle = {} }) {
        const shown = Object.values(bundle)
          .filter((file) => file.type === 'asset')
          .flatMap(({ names, fileName }) => names.map((name) => [name, fileName] as const))
          .reduce((text, [name, fileName]) => text.replaceAll(name, `/${fileName}`), screen);
        if (!html.includes(ROOT)) throw new Error(`the page has no ${ROOT}`);
        // Nothing in it can be used yet.
        return html.replace(ROOT, () => `${ROOT}<div inert aria-busy="true">${shown}</div>`);
      },
    },
  };
}

/** Runs the program's own components once, here. */
async function renderFirstScreen(): Promise<FirstScreen> {
  const server = await createServer({
    configFile: false,
    root: RENDERER,
    logLevel: 'error',
    appType: 'custom',
    server: { middlewareMode: true, hmr: false, ws: false, watch: null },
    optimizeDeps: { noDiscovery: true },
    plugins: [readConstants()],
  });
  try {
    const loaded = await server.ssrLoadModule('/first/first-screen.tsx');
    const draw: DrawFirstScreen = loaded['firstScreen'];
    return await draw({ light: readTokens('light'), dark: readTokens('dark') });
  } finally {
    await server.close();
  }
}

/** The colours of `tokens.css` in a theme. */
function readTokens(theme: ThemeName): Tokens {
  const text = readFileSync(resolve(RENDERER, 'app/tokens.css'), 'utf8');
  const colours = new Map(
    [...text.matchAll(/--([\w-]+): (light-dark\([^)]+\));/g)].map(([, name = '', value = '']) => [
      name,
      value,
    ]),
  );
  return (name) => {
    const colour = colours.get(name);
    if (colour === undefined) throw new Error(`tokens.css has no colour --${name}`);
    return inTheme(colour, theme);
  };
}
