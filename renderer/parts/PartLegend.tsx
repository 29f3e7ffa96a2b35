import type { MachineProfile } from '../../core/machine/profile.ts';
import type { LengthUnit } from '../../core/order/types.ts';
import type { PartDetail } from '../../core/session/types.ts';
import { formatLength } from '../../core/units/format-length.ts';
import { LAYER_LINES } from './layer-lines.ts';

interface PartLegendProps {
  readonly detail: PartDetail;
  readonly machine: MachineProfile;
  readonly showPath: boolean;
  readonly unit: LengthUnit;
}

/** The lines of the drawing: a sample, the layer's name in the file, and the word. */
export function PartLegend({ detail, machine, showPath, unit }: PartLegendProps) {
  const { part, followed } = detail;
  const used = LAYER_LINES.flatMap((line) => {
    const count = part.features.filter(({ operation }) => operation === line.operation).length;
    return count === 0 ? [] : [{ ...line, count }];
  });
  return (
    <section className="parts-panel" aria-label="Lines">
      <h4>Lines</h4>
      <ul className="parts-legend">
        {used.map(({ operation, className, word, count }) => (
          <li key={operation}>
            <Sample className={className} />
            <span>
              <strong>{machine.layers[operation].name}</strong> {word}, {count}
            </span>
          </li>
        ))}
        {showPath ? (
          <li>
            <Sample className="parts-line parts-line-path" />
            <span>
              <strong>Path of the cut</strong> {pathWords(followed === part.features, machine, unit)}
            </span>
          </li>
        ) : null}
      </ul>
    </section>
  );
}

function Sample({ className }: { readonly className: string }) {
  return (
    <svg width="56" height="12" aria-hidden="true">
      <path className={className} d="M 2 6 H 54" />
    </svg>
  );
}

function pathWords(isPart: boolean, machine: MachineProfile, unit: LengthUnit): string {
  if (machine.compensation === 'machine') {
    return 'is the part itself: this profile leaves the width of the cut to the machine';
  }
  if (isPart || machine.kerf === 0) return 'is the part itself: this profile has no kerf';
  return `lies half of ${formatLength(machine.kerf, unit)} in the waste; enlarge to see it`;
}
