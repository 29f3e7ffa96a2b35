import { formatLength } from '../../core/units/format-length.ts';
import { formatSize } from '../../core/units/format-size.ts';
import { drawerName } from '../../core/fit/drawer-name.ts';
import { EDGES, type Edge } from '../../core/order/types.ts';
import { settingsText } from '../../core/jigs/settings-text.ts';
import { selectJig } from '../store/changes.ts';
import { useProgram } from '../store/use-program.ts';
import './readout.css';

/** The picked drawer in figures to be read from a step back: what it hangs past its box, and its jigs. */
export function Readout() {
  const rowId = useProgram(({ selection }) => selection.rowId);
  const jigId = useProgram(({ selection }) => selection.jigId);
  const fit = useProgram(({ designed }) => (rowId === null ? undefined : designed?.fits[rowId]));
  const unit = useProgram(({ view }) => view.unit);
  const uses = useProgram(({ designed }) => designed?.uses);
  const jigs = useProgram(({ designed }) => designed?.jigs);
  const aids = useProgram(({ designed }) => designed?.aids);
  if (fit === undefined) {
    return (
      <section className="bench-panel" aria-labelledby="readout-title">
        <header>
          <h2 id="readout-title">Readout</h2>
        </header>
        <p className="readout-empty">Pick a drawer without faults to read its overhangs.</p>
      </section>
    );
  }
  const own = (uses ?? []).filter((use) => use.rowId === rowId);
  const ownAids = (aids ?? []).filter((aid) => aid.rowId === rowId);
  const length = (mm: number): string => formatLength(mm, unit);
  const set = new Set(own.map(({ edge }) => edge));
  return (
    <section className="bench-panel" aria-labelledby="readout-title">
      <header>
        <h2 id="readout-title">{drawerName(fit.drawer)}</h2>
        <span>{fit.drawer.style}</span>
        <span className="app-figure">× {fit.drawer.qty}</span>
      </header>
      <div className="bench-body readout">
        <div
          className="readout-cross"
          role="group"
          aria-label="Overhangs, seen from the front of the cabinet"
        >
          {EDGES.map((edge) => (
            <div key={edge} className={`readout-${edge}${set.has(edge) ? ' readout-set' : ''}`}>
              <span className="readout-edge">
                {edge}
                {set.has(edge) ? ' · jig' : ''}
              </span>
              <span className="readout-reading app-figure">{length(fit.overhang[edge])}</span>
            </div>
          ))}
          <div className="readout-front">
            <span className="app-figure">{formatSize(fit.frontW, fit.frontH, unit)}</span>
            <span>front</span>
            <span className="readout-box app-figure">{formatSize(fit.boxW, fit.boxH, unit)}</span>
            <span>box</span>
          </div>
        </div>
        <dl className="readout-list">
          {EDGES.filter((edge) => fit.gaps[edge] !== null).map((edge: Edge) => (
            <div key={edge}>
              <dt>Gap, {edge}</dt>
              <dd className="app-figure">{length(fit.gaps[edge] ?? 0)}</dd>
            </div>
          ))}
          <div>
            <dt>Running clearance</dt>
            <dd className="app-figure">{length(fit.runningClearance)}</dd>
          </div>
          <div>
            <dt>Front thickness</dt>
            <dd className="app-figure">{length(fit.frontThickness)}</dd>
          </div>
        </dl>
        <div className="readout-jigs" role="group" aria-label="Jigs of this drawer">
          {own.map((use) => {
            const jig = jigs?.find(({ id }) => id === use.jigId);
            return jig === undefined ? null : (
              <button
                key={`${use.jigId} ${use.edge}`}
                type="button"
                aria-pressed={use.jigId === jigId}
                onClick={() => selectJig(jig.id)}
              >
                <strong>{jig.id}</strong> {jig.kind}, {use.edge}
                <span className="app-figure"> {length(use.overhang)}</span>
                <span className="app-hidden">, sets {settingsText(jig, unit)}</span>
              </button>
            );
          })}
        </div>
        {ownAids.length === 0 ? null : (
          <div
            className="readout-jigs"
            role="group"
            aria-label="Drill guides and pull templates of this drawer"
          >
            {ownAids.map((aid) => {
              const jig = jigs?.find(({ id }) => id === aid.jigId);
              return jig === undefined ? null : (
                <button
                  key={`${aid.jigId} ${aid.corner?.hand} ${aid.corner?.end}`}
                  type="button"
                  aria-pressed={aid.jigId === jigId}
                  onClick={() => selectJig(jig.id)}
                >
                  <strong>{jig.id}</strong> {jig.kind}
                  {aid.corner === null ? '' : `, ${aid.corner.end} ${aid.corner.hand}`}
                  <span className="app-hidden">, {settingsText(jig, unit)}</span>
                </button>
              );
            })}
          </div>
        )}
      </div>
    </section>
  );
}
