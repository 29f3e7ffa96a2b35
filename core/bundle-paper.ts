import type { BundleFile } from './bundle-types.ts';
import type { PaperKind } from './files/output-kinds.ts';
import { calibrationPdf } from './files/paper/calibration-pdf.ts';
import { checklistPdf } from './files/paper/checklist-pdf.ts';
import { groupSetups } from './files/paper/instructions/group-setups.ts';
import type { SeatPicture } from './files/paper/instructions/types.ts';
import { instructionsPdf } from './files/paper/instructions-pdf.ts';
import type { PaperFonts } from './files/paper/pdf/fonts.ts';
import type { PaperSettings } from './files/paper/sheet/settings.ts';
import { groupTemplates } from './files/paper/template/group-templates.ts';
import { templatesPdf } from './files/paper/templates-pdf.ts';
import type { Outcome } from './findings/finding.ts';
import type { Design, Workshop } from './pipeline.ts';
import { lineDrawing } from './scene/line-drawing.ts';
import { seatScene } from './scene/seat-scene.ts';

/** Writes the sheets of paper of one order; what they share is worked out once. */
export function paperMaker(
  { order, fits, fastenings, plan }: Design,
  { standard, machine }: Pick<Workshop, 'standard' | 'machine'>,
  settings: PaperSettings,
  fonts: PaperFonts,
): (kind: PaperKind) => Promise<Outcome<readonly BundleFile[]>> {
  const fastened = new Map(fastenings.map((fastening) => [fastening.fit, fastening]));
  const fasteningOf = (fit: (typeof fits)[number]) => fastened.get(fit) ?? null;
  const templates = groupTemplates(fits.map((fit) => ({ fit, fastening: fasteningOf(fit) })));
  const setups = groupSetups({ fits, uses: plan.uses, aids: plan.aids, fasteningOf, templates });
  const pictureOf: SeatPicture = (fit, { id, edges }) => {
    const jig = plan.jigs.find((one) => one.id === id);
    if (jig === undefined) return null;
    const scene = seatScene({ fit, jig, uses: edges, machine, box: standard.box });
    const [view] = scene?.views ?? [];
    return scene === null || view === undefined ? null : lineDrawing(scene, view, order.unit);
  };
  const made: Readonly<Record<PaperKind, () => Promise<Outcome<Uint8Array | null>>>> = {
    templates: () => templatesPdf({ order, templates, settings, fonts }),
    instructions: () => instructionsPdf({ order, setups, pictureOf, fonts }),
    checklist: () => checklistPdf({ order, setups, fonts }),
    calibration: () => calibrationPdf({ settings, unit: order.unit, fonts }),
  };
  return async (kind) => {
    const { value, findings } = await made[kind]();
    return { value: value === null ? [] : [{ path: `paper/${kind}.pdf`, content: value }], findings };
  };
}
