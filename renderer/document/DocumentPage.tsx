import type { ReactNode } from 'react';
import { ChangesPanel } from './ChangesPanel.tsx';
import './document.css';
import { ShippedChoice } from './ShippedChoice.tsx';
import type { DocumentWork, EditedDocument } from './use-edited-document.ts';

interface DocumentPageProps<Value, Edited extends EditedDocument> {
  readonly title: string;
  /** `standard` */
  readonly what: string;
  readonly shipped: readonly Value[];
  readonly work: DocumentWork<Value, Edited>;
  /** What the order makes of the edit; null while there is nothing to try. */
  readonly changes: ReactNode;
  /** The form. */
  readonly children: ReactNode;
}

/** A document that is edited aside from the order: where it comes from, its values, what they change. */
export function DocumentPage<Value extends { readonly name: string }, Edited extends EditedDocument>(
  props: DocumentPageProps<Value, Edited>,
) {
  const { title, what, shipped, work, changes, children } = props;
  const { open, save } = work;
  return (
    <div className="document">
      <div className="document-head">
        <h2>{title}</h2>
        <ShippedChoice
          what={what}
          shipped={shipped}
          onStart={work.start}
          {...(open === undefined ? {} : { onOpen: open })}
          {...(save === undefined ? {} : { onSave: save })}
        />
      </div>
      <div className="document-form">{children}</div>
      <ChangesPanel isChanged={work.isChanged} faults={work.faults} onApply={work.apply} onDrop={work.drop}>
        {changes}
      </ChangesPanel>
    </div>
  );
}
