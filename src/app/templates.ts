import type { TemplateEntry } from '../panels/shown.ts';
import { words } from '../words/words.ts';

/** The sheets that know their job, as the start page and “Add a sheet” offer them. */
export const templates: readonly TemplateEntry[] = [
  {
    id: 'key-fill-background',
    title: words.templates.key,
    purpose: words.templates.keyHelp,
  },
  {
    id: 'reflected-survey',
    title: words.templates.survey,
    purpose: words.templates.surveyHelp,
  },
  {
    id: 'camera',
    title: words.templates.camera,
    purpose: words.templates.cameraHelp,
  },
  {
    id: 'tungsten-dimming',
    title: words.templates.dimming,
    purpose: words.templates.dimmingHelp,
  },
  {
    id: 'recce',
    title: words.templates.recce,
    purpose: words.templates.recceHelp,
  },
  {
    id: 'sun',
    title: words.templates.sun,
    purpose: words.templates.sunHelp,
  },
  {
    id: 'running-order',
    title: words.templates.running,
    purpose: words.templates.runningHelp,
  },
  {
    id: 'fixtures-and-distances',
    title: words.templates.distances,
    purpose: words.templates.distancesHelp,
  },
  {
    id: 'set-plan',
    title: words.templates.setPlan,
    purpose: words.templates.setPlanHelp,
  },
  {
    id: 'backdrop',
    title: words.templates.backdrop,
    purpose: words.templates.backdropHelp,
  },
  {
    id: 'marks',
    title: words.templates.marks,
    purpose: words.templates.marksHelp,
  },
  {
    id: 'meter-calibration',
    title: words.templates.calibration,
    purpose: words.templates.calibrationHelp,
  },
  {
    id: 'timeline',
    title: words.templates.timeline,
    purpose: words.templates.timelineHelp,
  },
  {
    id: 'match',
    title: words.templates.match,
    purpose: words.templates.matchHelp,
  },
  {
    id: 'power',
    title: words.templates.power,
    purpose: words.templates.powerHelp,
  },
  {
    id: 'compare',
    title: words.templates.compare,
    purpose: words.templates.compareHelp,
  },
  {
    id: 'choosing',
    title: words.templates.choosing,
    purpose: words.templates.choosingHelp,
  },
  {
    id: 'hire',
    title: words.templates.hire,
    purpose: words.templates.hireHelp,
  },
  {
    id: 'address-book',
    title: words.templates.addressBook,
    purpose: words.templates.addressBookHelp,
  },
  {
    id: 'package',
    title: words.templates.package,
    purpose: words.templates.packageHelp,
  },
  {
    id: 'set-up-log',
    title: words.templates.log,
    purpose: words.templates.logHelp,
  },
  {
    id: 'strike',
    title: words.templates.strike,
    purpose: words.templates.strikeHelp,
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
