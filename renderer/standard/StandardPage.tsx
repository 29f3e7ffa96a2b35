import { useMemo } from 'react';
import type { LengthUnit } from '../../core/order/types.ts';
import type { Draft } from '../../core/project/draft.ts';
import { parseStandard } from '../../core/rules/parse-standard.ts';
import type { ShopStandard } from '../../core/rules/types.ts';
import { writeStandard } from '../../core/rules/write-standard.ts';
import { DocumentPage } from '../document/DocumentPage.tsx';
import type { OpenText, SaveText } from '../document/files.ts';
import { useEditedDocument, type DocumentKind } from '../document/use-edited-document.ts';
import { useStandardComparison } from '../worker/useComparison.ts';
import { editStandard, readEdited, showIn, type EditedStandard } from './edited-standard.ts';
import { FitChanges } from './FitChanges.tsx';
import { shippedStandards } from './shipped.ts';
import { StandardForm } from './StandardForm.tsx';

export interface StandardPageProps {
  readonly standard: ShopStandard;
  /** The order that an edit is tried on. */
  readonly draft: Draft;
  readonly unit: LengthUnit;
  readonly onApply: (standard: ShopStandard) => void;
  /** Absent where there are no files to open or save. */
  readonly onOpen?: OpenText;
  readonly onSave?: SaveText;
}

const KIND: DocumentKind<ShopStandard, EditedStandard> = {
  begin: editStandard,
  showIn,
  read: readEdited,
  parse: parseStandard,
  write: writeStandard,
  kept: new WeakMap(),
};

/** The shop standard: every value with its source, and what the order would make of a change. */
export function StandardPage({ standard, draft, unit, onApply, onOpen, onSave }: StandardPageProps) {
  const shipped = useMemo(shippedStandards, []);
  const work = useEditedDocument({ kind: KIND, own: standard, unit, onApply, onOpen, onSave });
  const { tried, edited } = work;
  const comparison = useStandardComparison(draft, tried);
  return (
    <DocumentPage
      title="Shop standard"
      what="standard"
      shipped={shipped}
      work={work}
      changes={comparison === null ? null : <FitChanges comparison={comparison} unit={unit} />}
    >
      <StandardForm
        edit={work.edit}
        shopUnit={edited.shopUnit}
        onShopUnit={(shopUnit) => work.setEdited({ ...edited, shopUnit })}
      />
    </DocumentPage>
  );
}
