import Module from 'manifold-3d';
import { test } from 'vitest';
import { jigMesh } from '../../core/mesh/jig-mesh.ts';
import { jigSolids } from '../../core/scene/jig-solids.ts';
import { readMachine } from '../jigs/setups.ts';
import { demo } from '../pipeline/demo.ts';
import { manifoldOf, union } from '../scene/manifolds.ts';
const library = await Module(); library.setup();
test('x', () => {
  for (const [o, m, r] of [['harbor-library','laser-6','edge'],['harbor-library','router','corner'],['boathouse-frameless','laser-6','corner'],['boathouse-frameless','router','edge'],['boathouse-frameless','laser-3','edge']] as const) {
    const machine = readMachine(m);
    const { design } = demo(o, machine, r);
    for (const jig of design.plan.jigs) {
      const t0 = performance.now();
      const solids = jigSolids(jig, jig.seats[0]!, machine);
      const mesh = jigMesh(solids, library);
      const ms = performance.now() - t0;
      const edges = new Map<string, number>();
      let thin = 1e9, vol = 0;
      for (const t of mesh.triangles) {
        const p = t.map((i) => mesh.positions[i]!);
        for (const [a, b] of [[0,1],[1,2],[2,0]] as const) { const k = `${t[a]} ${t[b]}`; edges.set(k, (edges.get(k) ?? 0) + 1); }
        const [a, b, c] = p as any;
        const s = (u: any, v: any) => [u[0]-v[0],u[1]-v[1],u[2]-v[2]];
        const x = (u: any, v: any) => [u[1]*v[2]-u[2]*v[1],u[2]*v[0]-u[0]*v[2],u[0]*v[1]-u[1]*v[0]];
        const n = x(s(b,a),s(c,a)); const L = Math.max(Math.hypot(...s(b,a)),Math.hypot(...s(c,a)),Math.hypot(...s(c,b)));
        thin = Math.min(thin, Math.hypot(...n)/L);
        const q = x(a,b); vol += (q[0]!*c[0]+q[1]!*c[1]+q[2]!*c[2])/6;
      }
      let bad = 0; for (const [k, n] of edges) { const [a,b]=k.split(' '); if (n !== 1 || edges.get(`${b} ${a}`) !== 1) bad++; }
      const u = union(solids.map(manifoldOf));
      console.log(o, m, jig.id, jig.kind, 'solids', solids.length, 'tri', mesh.triangles.length, 'bad', bad, 'thin', thin.toExponential(2), 'vol', vol.toFixed(2), (vol/u.volume()-1).toExponential(1), 'parts', u.decompose().length, solids.filter(s=>s.material==='pin').length, 'pins', 'ms', ms.toFixed(0));
    }
  }
});
