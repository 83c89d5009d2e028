import { describe, expect, it } from 'vitest';
import { readBook } from '../../../src/book/form/read.ts';
import { readRecord } from '../../../src/book/form/recordfile.ts';
import { isFunction } from '../../../src/engine/index.ts';
import { htmlTable, valuesBeside } from '../../../src/files/htmlTable.ts';
import { readForeign } from '../../../src/files/in/read.ts';
import { readPhotometric } from '../../../src/files/photometric/read.ts';
import { readSpectra } from '../../../src/files/spectra/read.ts';
import { readWalk } from '../../../src/files/walk.ts';
import { formulaFrom } from '../../../src/formula/bind.ts';
import { readEntry } from '../../../functions/quantities/entry.ts';
import { quantityNames } from '../../../functions/quantities/names.ts';
import { usualSettings, writingSettings } from '../../../src/book/settings.ts';
import { runs } from '../../support/runs.ts';
import { PlainLayout } from '../formula/layout.ts';

// A reader that walks over the same text again for each of its letters does not come to an end here:
// ten million letters with `npm run hard`, some less with each run.
const length = runs(300_000, 10_000_000);
const pieces = [
  ...['a', ' ', '\n', '"', '""', ',', '1,', '=', '(', '<a', '<!--', '<![CDATA[', '&#', '&amp;'],
  ...['1 ', '0\n', '\t', '[A] ', 'f/', "'", '{"a":', '[', '-', '1/', '%', 'é', '\u0000', '“'],
];
const layout = new PlainLayout();
const writing = writingSettings(usualSettings);
const bytesOf = (text: string) => new TextEncoder().encode(text);

const readers: Readonly<Record<string, (text: string) => unknown>> = {
  book: readBook,
  'a cell of a book': (text) => readBook(`{"form":"halfstop book","version":1,"title":"${text}"}`),
  record: readRecord,
  table: (text) => readForeign(bytesOf(text), 'a.csv', { isFunction }),
  'pasted table': (text) => htmlTable(`<tr><td>${text}`),
  'values beside': (text) => valuesBeside(text, `=A1\t${text}`),
  photometric: readPhotometric,
  'photometric with a head': (text) => readPhotometric(`IESNA:LM-63-2002\n${text}`),
  spectra: readSpectra,
  'spectra in XML': (text) => readSpectra(`<SpectralData>${text}`),
  walk: (text) => readWalk(`point,meter,reading\n${text}`),
  formula: (text) => formulaFrom(`=${text}`, 'walk', layout),
  entry: (text) => readEntry(text, undefined, writing),
  'entry of each quantity': (text) =>
    quantityNames.map((quantity) => readEntry(text.slice(0, 100_000), quantity, writing)),
};

describe(`${String(length)} letters of one kind at each reader`, () => {
  it.each(Object.keys(readers))('%s comes to an end and throws nothing', (name) => {
    for (const piece of pieces) {
      const text = piece.repeat(length / piece.length);
      expect(() => readers[name]?.(text), `${JSON.stringify(piece)} over and over`).not.toThrow();
    }
  });
});
