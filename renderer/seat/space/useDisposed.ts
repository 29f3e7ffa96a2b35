import { useEffect, useMemo } from 'react';

interface Disposable {
  dispose(): void;
}

/** What `make` makes of the data, made anew when the data changes and given back when it is no longer drawn. */
export function useDisposed<T extends Disposable, D>(data: D, make: (data: D) => T): T {
  // `make` is a function of the data alone.
  const made = useMemo(() => make(data), [data, make]);
  useEffect(() => () => made.dispose(), [made]);
  return made;
}
