import { flushSync } from 'react-dom';
import { createRoot } from 'react-dom/client';
import { useState } from 'react';
import '../../../renderer/app/tokens.css';
import '../../../renderer/app/app.css';
import { StandardPage } from '../../../renderer/standard/StandardPage.tsx';
import { MachinePage } from '../../../renderer/machine/MachinePage.tsx';
import { OutputPage } from '../../../renderer/output/OutputPage.tsx';
import { PartView } from '../../../renderer/parts/PartView.tsx';
import { JigPlanPage } from '../../../renderer/jig-plan/JigPlanPage.tsx';
import { GapsView } from '../../../renderer/gaps/GapsView.tsx';
import { CabinetView } from '../../../renderer/cabinet/CabinetView.tsx';

const VIEWS = { CabinetView, PartView, GapsView, StandardPage, MachinePage, OutputPage, JigPlanPage };

/** Callbacks that were called, with their arguments. */
globalThis.calls = [];

const root = createRoot(document.getElementById('root'));

/** Shows a view; `set` maps a callback's name to the prop that its argument changes, as a store would do. */
globalThis.show = (name, props, callbacks, set = {}) => {
  const View = VIEWS[name];
  globalThis.calls = [];
  function Held() {
    const [changed, setChanged] = useState({});
    globalThis.change = (more) => flushSync(() => setChanged((now) => ({ ...now, ...more })));
    const called = Object.fromEntries(
      callbacks.map((callback) => [
        callback,
        (argument) => {
          globalThis.calls.push([callback, argument]);
          if (set[callback] === 'selection') {
            setChanged((now) => ({ ...now, selection: { rowId: argument, jigId: null, partId: null } }));
          } else if (set[callback] !== undefined) {
            setChanged((now) => ({ ...now, [set[callback]]: argument }));
          }
        },
      ]),
    );
    return <View {...props} {...changed} {...called} />;
  }
  flushSync(() => root.render(<Held key={Math.random()} />));
};
