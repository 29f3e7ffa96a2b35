import { useEffect, useState, type ComponentType, type ReactNode } from 'react';

type LateComponent<Props extends object> = ComponentType<Props> & {
  /** Loads it before it is shown. */
  readonly load: () => Promise<unknown>;
};

/**
 * A component that is loaded when it is first shown, and drawn at once where it has been loaded before. React's own
 * `lazy` shows what it waits with for 300 ms and more, however soon the component is there.
 */
export function late<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  waiting: ReactNode,
): LateComponent<Props> {
  let loaded: ComponentType<Props> | null = null;
  const loadOnce = async (): Promise<ComponentType<Props>> => (loaded ??= await load());
  function Late(props: Props) {
    const [Loaded, setLoaded] = useState(() => loaded);
    const [problem, setProblem] = useState<unknown>(null);
    useEffect(() => {
      if (Loaded !== null) return;
      loadOnce().then((component) => setLoaded(() => component), setProblem);
    }, [Loaded]);
    // Told by what tells of every fault of the page.
    if (problem !== null) throw problem;
    return Loaded === null ? waiting : <Loaded {...props} />;
  }
  return Object.assign(Late, { load: loadOnce });
}
