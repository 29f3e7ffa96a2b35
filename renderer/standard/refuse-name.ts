/** Why a thing that goes by its name may not be called so; null when it may. */
export function refuseName(text: string, own: string, names: readonly string[]): string | null {
  const name = text.trim();
  if (name === '') return 'it is empty; write a name';
  return names.some((other) => other !== own && other.toLowerCase() === name.toLowerCase())
    ? 'there is one of that name already; write another'
    : null;
}
