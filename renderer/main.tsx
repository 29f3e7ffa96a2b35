import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app/App.tsx';
import { designLine } from './app/design-line.ts';
import { stageLoaded } from './app/StagePanel.tsx';
import { keepBuiltPicture } from './seat/built-picture.ts';
import { useProgram } from './store/use-program.ts';

/** ms. The page does not stand still longer than this, whatever is missing. */
const PATIENCE = 2000;

/** Ends when the demo order has been looked at. */
const looked = (): Promise<void> =>
  new Promise((resolve) => {
    const end = useProgram.subscribe(({ designed }) => {
      if (designed === null) return;
      end();
      resolve();
    });
  });

/** The page shows the first screen as it was built; the one that runs takes its place when all of it is there. */
async function show(root: HTMLElement): Promise<void> {
  await Promise.race([
    // What cannot be loaded is told of by the program.
    Promise.allSettled([looked(), stageLoaded(useProgram.getState().view.stage)]),
    new Promise((resolve) => setTimeout(resolve, PATIENCE)),
  ]);
  keepBuiltPicture(root);
  createRoot(root).render(
    <StrictMode>
      <App />
    </StrictMode>,
  );
}

const root = document.getElementById('root');
if (root === null) throw new Error('the page has no root');
// Not awaited: what is loaded meanwhile imports from here.
void show(root);
designLine();
