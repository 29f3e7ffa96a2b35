import { ariaShortcut, shortcutText } from '../store/shortcuts.ts';
import { useProgram } from '../store/use-program.ts';
import { actionOf } from './actions.ts';
import { IS_MAC } from './is-mac.ts';

interface ActionButtonProps {
  readonly action: string;
  /** In place of the action's label where there is little room. */
  readonly label?: string;
  readonly className?: string;
}

/** A button for an action of the list, with its keys in the tip. */
export function ActionButton({ action: id, label, className }: ActionButtonProps) {
  const action = actionOf(id);
  const enabled = useProgram(action.enabled);
  const checked = useProgram((state) => action.checked?.(state) ?? null);
  const detail = useProgram((state) => action.detail?.(state) ?? null);
  const keys = action.shortcut === null ? '' : ` (${shortcutText(action.shortcut, IS_MAC)})`;
  const words = detail === null ? action.label : `${action.label}: ${detail}`;
  return (
    <button
      type="button"
      className={className}
      disabled={!enabled}
      title={`${words}${keys}`}
      aria-label={nameOf(action.label, label)}
      aria-pressed={checked ?? undefined}
      aria-keyshortcuts={action.shortcut === null ? undefined : ariaShortcut(action.shortcut, IS_MAC)}
      onClick={action.perform}
    >
      {label ?? action.label}
    </button>
  );
}

/** What is read out: the whole label, and the short one with it where that is not a part of it. */
function nameOf(label: string, short: string | undefined): string | undefined {
  if (short === undefined || short === label) return undefined;
  return label.toLowerCase().includes(short.toLowerCase()) ? label : `${short}: ${label}`;
}
