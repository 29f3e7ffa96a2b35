import { lazy, Suspense, useEffect } from 'react';
import { useProgram } from '../store/use-program.ts';
import { listenForOffers } from '../transport/notices.ts';
import { listenForDrops, openDropped } from '../transport/open-dropped.ts';
import './tokens.css';
import './app.css';
import { Bench } from './Bench.tsx';
import { offerKept, open, openAfterLeaving } from './document-actions.ts';
import { keepWork } from './keep-work.ts';
import { Question } from './Question.tsx';
import { StatusLine } from './StatusLine.tsx';
import { TopBar } from './TopBar.tsx';
import { useShortcuts } from './useShortcuts.ts';

// Pages that are seen now and then; the bench is there at once.
const Standard = lazy(async () => ({ default: (await import('./pages/Standard.tsx')).Standard }));
const Machine = lazy(async () => ({ default: (await import('./pages/Machine.tsx')).Machine }));
const Output = lazy(async () => ({ default: (await import('./pages/Output.tsx')).Output }));
const JigPlan = lazy(async () => ({ default: (await import('./pages/JigPlan.tsx')).JigPlan }));

const PAGES = { standard: Standard, machine: Machine, output: Output, jigs: JigPlan } as const;

/** The program. */
export function App() {
  const page = useProgram(({ view }) => view.page);
  const Page = page === 'bench' ? null : PAGES[page];
  const theme = useProgram(({ view }) => view.theme);
  useShortcuts();
  useEffect(() => {
    document.documentElement.dataset['theme'] = theme;
  }, [theme]);
  useEffect(() => {
    void offerKept();
    const ends = [
      keepWork(),
      listenForDrops((file) => void openAfterLeaving(() => openDropped(file))),
      listenForOffers((handle) => void open(handle)),
    ];
    return () => ends.forEach((end) => end());
  }, []);
  return (
    <div className="app-frame">
      <TopBar />
      <div className="app-page">
        {Page === null ? (
          <Bench />
        ) : (
          <Suspense fallback={<p>One moment…</p>}>
            <Page />
          </Suspense>
        )}
      </div>
      <StatusLine />
      <Question />
    </div>
  );
}
