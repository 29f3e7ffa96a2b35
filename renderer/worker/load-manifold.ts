import type { ManifoldToplevel } from 'manifold-3d';

/** Loads the geometry library into the worker; its files are fetched when solids are first written. */
export async function loadManifold(): Promise<ManifoldToplevel> {
  const [{ default: load }, { default: wasmUrl }] = await Promise.all([
    import('manifold-3d'),
    import('manifold-3d/manifold.wasm?url'),
  ]);
  const manifold = await load({ locateFile: () => wasmUrl });
  manifold.setup();
  return manifold;
}
