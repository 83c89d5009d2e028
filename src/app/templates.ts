import type { TemplateEntry } from '../panels/workbook.ts';

/** The sheets that know their job, as the start page and “Add a sheet” offer them. */
export const templates: readonly TemplateEntry[] = [
  {
    id: 'key-fill-background',
    title: 'Key, fill and background',
    purpose: 'How far each reading is from what was planned, and what closes the gap.',
  },
  {
    id: 'camera',
    title: 'Camera',
    purpose: 'What each camera is set to, what its stop puts at grey, and how they compare.',
  },
  {
    id: 'tungsten-dimming',
    title: 'Tungsten dimming',
    purpose: 'How warm a tungsten lamp turns as it is dimmed, and how far from the camera’s white.',
  },
  {
    id: 'sun',
    title: 'Sun',
    purpose: 'Where the sun stands through the day, and how much light a clear sky gives.',
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
