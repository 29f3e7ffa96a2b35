const ask = (event: BeforeUnloadEvent): void => event.preventDefault();

/** Lets the browser ask before a tab with unsaved work is closed. The desktop guards its window itself. */
export function guardTab(unsaved: boolean): void {
  // Added twice it is there once.
  if (unsaved) window.addEventListener('beforeunload', ask);
  else window.removeEventListener('beforeunload', ask);
}
