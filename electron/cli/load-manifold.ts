import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { ManifoldToplevel } from 'manifold-3d';

/** Loads the geometry library; in the bundle its wasm lies beside the chunks, from source in its package. */
export async function loadManifold(): Promise<ManifoldToplevel> {
  const { default: load } = await import('manifold-3d');
  const beside = ['./manifold.wasm', '../manifold.wasm'].map((path) =>
    fileURLToPath(new URL(path, import.meta.url)),
  );
  const found = beside.find((path) => existsSync(path));
  const manifold = await (found === undefined ? load() : load({ locateFile: () => found }));
  manifold.setup();
  return manifold;
}
