import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { catalogue } from '../../../functions/index.ts';
import { createBook } from '../../../src/book/book.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { figuresOf } from '../../../src/book/figures.ts';
import { writingSettings } from '../../../src/book/settings.ts';
import type { Document } from '../../../src/book/types.ts';
import { judgingPlaces } from '../../../src/check/points.ts';
import { drawnWithin, heldTo, isDrawnWithin } from '../../../src/check/tolerance.ts';
import { connectEngine } from '../../../src/engine/index.ts';
import { pageTheme } from '../../../src/figures/kit/theme.ts';
import { fixturesIn } from '../../../src/files/photometric/shelf.ts';
import { spectraIn } from '../../../src/files/spectra/shelf.ts';
import { figuresView } from '../../../src/panels/figures/gather.ts';

const templates = new URL('../../../templates/', import.meta.url);
/** Between them they have a figure of nearly every kind. */
const named = ['harbour-hours', 'match'];

function open(template: string): Document {
  const read = readBook(readFileSync(new URL(`${template}/book.json`, templates), 'utf8'));
  if (!read.ok) throw new Error(read.reason);
  return read.document;
}

/** Every figure of a book as it is said and drawn under a tolerance, by its id. */
function drawn(template: string, tolerance: number): ReadonlyMap<string, string> {
  const book = createBook(open(template));
  const { document } = book;
  const settings = { ...document.settings, tolerance };
  book.run({ label: '', steps: [{ kind: 'setSettings', settings }] });
  for (const { id } of document.sheets)
    book.run({
      label: '',
      steps: [{ kind: 'setSheet', sheet: id, properties: { tolerance: null } }],
    });
  const engine = connectEngine(book, { fixtures: fixturesIn, spectra: spectraIn });
  const look = {
    document,
    engine,
    writing: writingSettings(document.settings),
    remarksAt: () => [],
  };
  const size = { width: 700, letters: 13 };
  return new Map(
    document.sheets.flatMap(({ id }) =>
      figuresView(look, id).map((one) => {
        const { made } = one;
        const picture = 'reason' in made ? made.reason : made.draw(pageTheme, size);
        const said = 'reason' in made ? [] : made.sentences;
        return [one.id, JSON.stringify([said, picture])] as const;
      }),
    ),
  );
}

describe('what is held to the tolerance of its sheet', () => {
  test('are the functions of the library that take it from the sheet', () => {
    const takers = catalogue.flatMap(({ name, parameters }) => {
      const at = parameters.findIndex(({ fromBook }) => fromBook === 'tolerance');
      return at < 0 ? [] : [[name, at] as const];
    });
    expect(heldTo).toEqual(Object.fromEntries(takers));
  });

  test('are the figures that look otherwise under another tolerance', () => {
    const changed = new Set<string>();
    for (const template of named) {
      const narrow = drawn(template, 0.1);
      const wide = drawn(template, 0.9);
      for (const { id, kind } of figuresOf(open(template)))
        if (narrow.get(id) !== wide.get(id)) changed.add(kind);
    }
    expect(drawnWithin).toEqual(changed);
  });

  test.each([
    ['key-fill-background', true],
    ['reflected-survey', true],
    ['backdrop', true],
    ['compare', true],
    ['match', false],
    ['power', false],
    ['hire', false],
    ['choosing', false],
    ['sun', false],
    ['timeline', false],
  ])('%s: %s', (template, held) => {
    const document = open(template);
    const [sheet] = document.sheets;
    if (!sheet) throw new Error('The book has no sheet.');
    const found = judgingPlaces(sheet).held.length > 0 || isDrawnWithin(document, sheet.id);
    expect(found).toBe(held);
  });
});
