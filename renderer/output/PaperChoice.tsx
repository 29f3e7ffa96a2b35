import { includesKind, type OutputChoice } from '../../core/files/output-choice.ts';
import { PAPER_KINDS } from '../../core/files/output-kinds.ts';
import { PAPER_LIMITS } from '../../core/files/paper/sheet/settings.ts';
import { SHEET_NAMES } from '../../core/files/paper/sheet/sheet-sizes.ts';
import { plainDecimal } from '../../core/units/plain-decimal.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { TextField } from '../fields/TextField.tsx';

const LONG = 'as long as needed';

const SHEETS = [
  ...SHEET_NAMES.map((name) => ({ value: name, label: name })),
  { value: LONG, label: 'one page as long as needed, for a plotter' },
] as const;

interface PaperChoiceProps {
  readonly choice: OutputChoice;
  readonly onChoice: (choice: OutputChoice) => void;
}

/** The paper of what is printed, and what the printer's error is made good with; nothing when nothing is. */
export function PaperChoice({ choice, onChoice }: PaperChoiceProps) {
  if (!PAPER_KINDS.some((kind) => includesKind(choice, kind))) return null;
  const { paper } = choice;
  const { min, max } = PAPER_LIMITS.factor;
  const set = (change: Partial<typeof paper>): void =>
    onChoice({ ...choice, paper: { ...paper, ...change } });
  return (
    <fieldset className="output-choice">
      <legend>Paper and printer</legend>
      <div className="output-paper">
        <ChoiceField
          label="Paper"
          value={typeof paper.sheet === 'string' ? paper.sheet : LONG}
          choices={SHEETS}
          onChange={(sheet) => set({ sheet })}
        />
        {(['x', 'y'] as const).map((axis) => (
          <TextField
            key={axis}
            label={
              axis === 'x' ? 'Printer factor across the short side' : 'Printer factor along the long side'
            }
            hint={`From the printer calibration; 1 where it prints true. ${min} to ${max}.`}
            value={plainDecimal(paper.factors[axis])}
            refuse={(text) => (factorOf(text) === null ? `write a number from ${min} to ${max}` : null)}
            onCommit={(text) =>
              set({ factors: { ...paper.factors, [axis]: factorOf(text) ?? paper.factors[axis] } })
            }
          />
        ))}
      </div>
    </fieldset>
  );
}

/** A factor as it was typed, with a point or a comma; null when it is none that can be made good. */
function factorOf(text: string): number | null {
  if (!/^\s*\d+(?:[.,]\d+)?\s*$/.test(text)) return null;
  const factor = Number(text.trim().replace(',', '.'));
  const { min, max } = PAPER_LIMITS.factor;
  return factor >= min && factor <= max ? factor : null;
}
