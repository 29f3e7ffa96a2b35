import type { Fastening } from '../../core/fastening/types.ts';
import type { DrawerFit } from '../../core/fit/types.ts';
import type { Jig } from '../../core/jigs/types.ts';
import type { MachineProfile } from '../../core/machine/profile.ts';
import type { Edge } from '../../core/order/types.ts';
import { seatScene } from '../../core/scene/seat-scene.ts';
import type { SeatScene } from '../../core/scene/types.ts';
import { readMachine } from '../jigs/setups.ts';
import { demo } from '../pipeline/demo.ts';

/** One jig on one drawer. */
export interface DemoScene {
  readonly name: string;
  readonly fit: DrawerFit;
  readonly jig: Jig;
  readonly machine: MachineProfile;
  readonly uses: readonly Edge[];
  readonly fastening: Fastening | null;
  readonly scene: SeatScene;
}

export interface DemoScenes {
  readonly name: string;
  readonly drawers: number;
  readonly jigs: readonly Jig[];
  readonly scenes: readonly DemoScene[];
}

const ORDERS = ['harbor-library', 'boathouse-frameless'] as const;

const MACHINES = [
  ['laser-6', 'edge'],
  ['laser-3', 'corner'],
  ['router', 'corner'],
  ['router', 'edge'],
] as const;

type Place = readonly [(typeof ORDERS)[number], (typeof MACHINES)[number][0], (typeof MACHINES)[number][1]];

const EVERY: readonly Place[] = ORDERS.flatMap((order) =>
  MACHINES.map(([machine, registration]): Place => [order, machine, registration]),
);

/** Enough of them to have every kind of jig, on either machine. */
export const SOME: readonly Place[] = [
  ['harbor-library', 'laser-6', 'edge'],
  ['harbor-library', 'router', 'edge'],
  ['boathouse-frameless', 'laser-3', 'corner'],
  ['boathouse-frameless', 'router', 'corner'],
];

/** Every jig on every drawer that it serves, of both demo orders; throws where a jig has no seat. */
export const demoScenes = (places = EVERY): readonly DemoScenes[] =>
  places.map(([order, machineName, registration]) => {
    const machine = readMachine(machineName);
    const { design, workshop } = demo(order, machine, registration);
    const { fits, fastenings, plan } = design;
    const { standard } = workshop;
    const scenes = fits.flatMap((fit) => {
      const used = plan.uses.filter((use) => use.fit === fit);
      return [...new Set(used.map(({ jig }) => jig))].map((jig): DemoScene => {
        const uses = used.filter((use) => use.jig === jig).map(({ edge }) => edge);
        const name = `${jig.id} on ${fit.drawer.cabinet} ${fit.drawer.drawer}`;
        const fastening = fastenings.find((one) => one.fit === fit) ?? null;
        const scene = seatScene({ fit, jig, uses, machine, box: standard.box, fastening });
        if (scene === null) throw new Error(`${name} has no seat`);
        return { name, fit, jig, machine, uses, fastening, scene };
      });
    });
    return {
      name: `${order}, ${machineName}, ${registration}`,
      drawers: fits.length,
      jigs: plan.jigs.filter(({ drilling }) => drilling === undefined),
      scenes,
    };
  });
