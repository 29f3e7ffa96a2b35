import { DocumentChoice } from '../document/DocumentChoice.tsx';
import { DocumentField } from '../document/DocumentField.tsx';
import type { DocumentEdit } from '../document/edit.ts';

const USES = [
  { value: 'none', label: 'nothing' },
  { value: 'marks', label: 'tabs, marked on a layer of their own' },
  { value: 'bridges', label: 'bridges: outlines are cut in open stretches' },
] as const;

/** What holds the parts in their sheet until they are broken out. */
export function TabFields({ edit }: { readonly edit: DocumentEdit }) {
  return (
    <section className="document-section" aria-labelledby="machine-tabs">
      <h3 id="machine-tabs">Tabs</h3>
      <div className="document-pair">
        <DocumentChoice
          edit={edit}
          path={['tabs', 'use']}
          label="Parts are held in the sheet by"
          choices={USES}
          hint="Of whole sheets only; the files of single parts have none"
        />
        <DocumentField edit={edit} path={['tabs', 'width']} label="Width of a tab" figures />
        <DocumentField
          edit={edit}
          path={['tabs', 'spacing']}
          label="From one tab to the next at most"
          figures
        />
      </div>
    </section>
  );
}
