import { Draft } from './inside/draft.ts';
import { DraftSheet } from './inside/sheet.ts';
import { usualSettings } from './settings.ts';
import type { Document, Id, Settings, SheetContent, SheetProperties } from './types.ts';
import { words } from '../words/words.ts';

/** A document with one empty sheet. The zone comes from whoever knows the clock. */
export function newDocument(
  { newId }: { newId(): Id },
  {
    title = '',
    settings = {},
    sheet = {},
  }: {
    title?: string;
    settings?: Partial<Settings>;
    sheet?: Partial<SheetProperties>;
  } = {},
): Document {
  const draft = new Draft(title, { ...usualSettings, ...settings });
  draft.placeSheet(
    new DraftSheet(emptySheet(newId(), { name: words.book.firstSheet, ...sheet })),
    0,
  );
  return draft;
}

export function emptySheet(
  id: Id,
  properties: Partial<SheetProperties> & Pick<SheetProperties, 'name'>,
): SheetContent {
  return {
    id,
    properties: { ...blankProperties, ...properties },
    rows: [],
    columns: [],
    rowProperties: [],
    columnProperties: [],
    areas: [],
    cells: [],
  };
}

const blankProperties = {
  title: '',
  purpose: '',
  phase: null,
  template: null,
  tolerance: null,
  frozenRows: 0,
  frozenColumns: 0,
  filter: null,
};
