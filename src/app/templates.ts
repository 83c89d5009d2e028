import type { TemplateEntry } from '../panels/workbook.ts';

/** The sheets that know their job, as the start page and “Add a sheet” offer them. */
export const templates: readonly TemplateEntry[] = [
  {
    id: 'key-fill-background',
    title: 'Key, fill and background',
    purpose: 'How far each reading is from what was planned, and what closes the gap.',
  },
];

/** The sample book to look round in. */
export const sample = 'harbour-hours';

const books = import.meta.glob<string>('../../templates/*/book.json', {
  query: '?raw',
  import: 'default',
});

/** The text of a template’s book, fetched when it is wanted. */
export async function templateText(id: string): Promise<string | undefined> {
  return books[`../../templates/${id}/book.json`]?.();
}

/** Only what is there to be opened is offered. */
export const isThere = (id: string): boolean => `../../templates/${id}/book.json` in books;
