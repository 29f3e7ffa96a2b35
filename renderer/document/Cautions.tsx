import { CAUTIONS } from '../../core/cautions/cautions.ts';

/** The usual cautions, where the work can hurt someone. */
export function Cautions() {
  return (
    <section className="document-section document-cautions" aria-labelledby="cautions">
      <h3 id="cautions">Before you cut</h3>
      <ul>
        {CAUTIONS.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </section>
  );
}
