import { createRoot } from 'react-dom/client';
import '../../../renderer/app/tokens.css';
import '../../../renderer/app/app.css';
import { SeatView } from '../../../renderer/seat/SeatView.tsx';

// Drives the view as the program does: what the tests give is shown, and pictures are counted.
const root = createRoot(document.querySelector('#root'));
let given = { scene: null, unit: 'in', theme: 'light', reducedMotion: true };

globalThis.seatFrames = 0;

globalThis.showSeat = (changes) => {
  // A new seat is only settled once it has been drawn.
  if (changes.scene !== undefined) globalThis.seatFrames = 0;
  given = { ...given, ...changes };
  document.documentElement.dataset.theme = given.theme;
  root.render(
    <SeatView
      {...given}
      onFrame={() => {
        globalThis.seatFrames += 1;
      }}
    />,
  );
};

globalThis.showSeat({});
