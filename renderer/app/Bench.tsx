import { OrderPanel } from '../order/OrderPanel.tsx';
import { Readout } from '../readout/Readout.tsx';
import { StagePanel } from './StagePanel.tsx';
import './bench.css';

/** Where the work is done: the order, what is looked at, and the figures. */
export const Bench = () => (
  <main className="bench" aria-label="Bench">
    <OrderPanel />
    <StagePanel />
    <Readout />
  </main>
);
