import type { ManifoldToplevel } from 'manifold-3d';
import type { BundleFile } from './bundle-types.ts';
import type { Outcome } from './findings/finding.ts';
import { hasErrors } from './findings/make.ts';
import type { Jig } from './jigs/types.ts';
import type { MachineProfile } from './machine/profile.ts';
import { checkMesh } from './mesh/check-mesh.ts';
import { jigMesh } from './mesh/jig-mesh.ts';
import { write3mf } from './mesh/write-3mf.ts';
import { writeStl } from './mesh/write-stl.ts';
import { jigSolids } from './scene/jig-solids.ts';

/** Jigs to print, as they stand in their first seat: an STL and a 3MF file for each, a jig at a time. */
export async function* bundleSolids(
  jigs: readonly Jig[],
  machine: MachineProfile,
  loadManifold: () => Promise<ManifoldToplevel>,
  stop: () => boolean = () => false,
): AsyncGenerator<Outcome<readonly BundleFile[]>> {
  const manifold = await loadManifold();
  for (const jig of jigs) {
    if (stop()) return;
    const [seat] = jig.seats;
    if (seat === undefined) throw new RangeError(`bundleSolids: jig ${jig.id} has no seat`);
    const mesh = jigMesh(jigSolids(jig, seat, machine), manifold);
    const findings = checkMesh(mesh, jig.id);
    yield {
      value: hasErrors(findings)
        ? []
        : [
            { path: `solids/${jig.id}.stl`, content: writeStl(mesh, jig.id) },
            { path: `solids/${jig.id}.3mf`, content: write3mf(mesh, jig.id) },
          ],
      findings,
    };
  }
}
