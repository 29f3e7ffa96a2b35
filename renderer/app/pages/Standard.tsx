import { setStandard } from '../../store/changes.ts';
import { useProgram } from '../../store/use-program.ts';
import { StandardPage } from '../../standard/StandardPage.tsx';
import { ComparerContext } from '../../worker/comparer.ts';
import { COMPARER } from '../comparer.ts';
import { openText, saveText } from '../text-files.ts';

/** The shop standard of the document. */
export function Standard() {
  const draft = useProgram((state) => state.draft);
  const unit = useProgram(({ view }) => view.unit);
  return (
    <main aria-label="Shop standard">
      <ComparerContext value={COMPARER}>
        <StandardPage
          standard={draft.standard}
          draft={draft}
          unit={unit}
          onApply={(standard) => setStandard(standard)}
          onOpen={openText}
          onSave={saveText}
        />
      </ComparerContext>
    </main>
  );
}
