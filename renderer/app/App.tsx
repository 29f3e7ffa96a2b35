import { useEffect } from 'react';
import { late } from '../late.tsx';
import { useProgram } from '../store/use-program.ts';
import { listenForOffers } from '../transport/notices.ts';
import { listenForDrops, openDropped } from '../transport/open-dropped.ts';
import './tokens.css';
import './app.css';
import { Bench } from './Bench.tsx';
import { askForKept, offerKept, open, openAfterLeaving } from './document-actions.ts';
import { keepWork } from './keep-work.ts';
import { Question } from './Question.tsx';
import { StatusLine } from './StatusLine.tsx';
import { TopBar } from './TopBar.tsx';
import { useShortcuts } from './useShortcuts.ts';

const WAITING = <p>One moment…</p>;

// Pages that are seen now and then; the bench is there at once.
const Standard = late(async () => (await import('./pages/Standard.tsx')).Standard, WAITING);
const Machine = late(async () => (await import('./pages/Machine.tsx')).Machine, WAITING);
const Output = late(async () => (await import('./pages/Output.tsx')).Output, WAITING);
const JigPlan = late(async () => (await import('./pages/JigPlan.tsx')).JigPlan, WAITING);

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
    const kept = askForKept();
    void offerKept(kept);
    const ends = [
      keepWork(kept),
      listenForDrops((file) => void openAfterLeaving(() => openDropped(file))),
      listenForOffers((handle) => void open(handle)),
    ];
    return () => ends.forEach((end) => end());
  }, []);
  return (
    <div className="app-frame">
      <TopBar />
      <div className="app-page">{Page === null ? <Bench /> : <Page />}</div>
      <StatusLine />
      <Question />
    </div>
  );
}
