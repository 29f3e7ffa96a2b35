import { TextField } from '../fields/TextField.tsx';
import { setDate, setName } from '../store/changes.ts';
import { useProgram } from '../store/use-program.ts';
import { ActionButton } from './ActionButton.tsx';
import { CommandList } from './CommandList.tsx';
import './top-bar.css';

/** The order's name and date, the pages, and what is done with the whole document. */
export function TopBar() {
  const name = useProgram(({ draft }) => draft.name);
  const date = useProgram(({ draft }) => draft.date ?? '');
  return (
    <header className="app-top">
      <div className="app-top-name">
        <h1 className="app-hidden">Overhang</h1>
        <TextField label="Order" value={name} onCommit={setName} refuse={refuseEmpty} />
        <TextField label="Date" value={date} onCommit={setDate} refuse={refuseDate} />
      </div>
      <nav className="app-top-group" aria-label="Pages">
        <ActionButton action="go.bench" />
        <ActionButton action="go.standard" />
        <ActionButton action="go.machine" />
        <ActionButton action="go.jigs" />
        <ActionButton action="go.output" className="app-main-button" />
      </nav>
      <div className="app-top-group">
        <ActionButton action="file.open" />
        <ActionButton action="file.save" />
        <ActionButton action="edit.undo" />
        <ActionButton action="edit.redo" />
      </div>
      <div className="app-top-group">
        <ActionButton action="view.unit" label="mm" />
        <ActionButton action="view.theme" label="Dark" />
        <CommandList />
      </div>
    </header>
  );
}

const refuseEmpty = (text: string): string | null => (text.trim() === '' ? 'write a name' : null);

const refuseDate = (text: string): string | null =>
  text === '' || /^\d{4}-\d{2}-\d{2}$/.test(text) ? null : 'write a day as YYYY-MM-DD, or nothing';
