import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { strFromU8, unzipSync, zipSync } from 'fflate';
import { isFunction } from '../../../src/engine/index.ts';
import { newBookFrom } from '../../../src/files/in/newBook.ts';
import { readForeign } from '../../../src/files/in/read.ts';
import { odsOf } from '../../../src/files/ods/write.ts';
import type { PlainBook } from '../../../src/files/plain/types.ts';
import { sampleSpectra } from '../../../src/files/spectra/samples.ts';
import { readWalk } from '../../../src/files/walk.ts';
import { xlsxOf } from '../../../src/files/xlsx/write.ts';
import { root } from '../../../src/tools/root.mjs';
import { planMeans } from '../../../templates/build.ts';
import { type Chance, mutated, pick } from '../mutated.ts';
import { tried as photometric } from '../photometric/tried.ts';
import { tried as spectra } from '../spectra/tried.ts';
import { spoiledBytes } from '../spoiled.ts';
import { refused, taken, type Tried } from '../tried.ts';
import type { Door } from './door.ts';

const plain: PlainBook = {
  title: 'Boat shed',
  names: [{ name: 'Key', formula: "='Boat shed'!$B$1" }],
  sheets: [
    {
      ...{ name: 'Boat shed', protected: true, widths: new Map([[0, 120]]) },
      ...{ frozenRows: 1, frozenColumns: 0 },
      cells: [
        { row: 0, column: 0, value: 'Bench', note: 'by the window' },
        { row: 0, column: 1, value: 400, look: { after: ' lx' }, unlocked: true },
        { row: 1, column: 1, value: 800, formula: '=B1*2' },
        { row: 2, column: 1, value: true },
        { row: 2, column: 2, value: 'f/5.6', formula: '=CONCATENATE("f/",5.6)' },
      ],
    },
  ],
};
const packed = { xlsx: await xlsxOf(plain), ods: odsOf(plain) };

const odd = [
  ...['', ' ', '"', "'", '=', '<', '&amp;', '&#0;', ']]>', '<a>', '1e999', '-0', 'NaN', '\u0000'],
  ...['t="s"', 't="shared"', 'si="0"', 'ref="A1:XFD1048576"', 'r="ZZZ99999999"', '__proto__'],
  ...['table:number-rows-repeated="2000000000"', 'office:value-type="date"', '=WEBSERVICE("x")'],
];

/** Taken in as a book of its own, as the page does after the person has agreed. */
function foreign(bytes: Uint8Array, name: string): Tried {
  const text = Buffer.from(bytes).toString('base64');
  const read = readForeign(bytes, name, { isFunction });
  if (!read.ok) return refused(text, read.reason);
  const made = newBookFrom(read.imported, planMeans());
  return made.ok ? taken(text) : refused(text, made.reason);
}

/** Half the time the packed file itself, half the time one of its parts. */
function spreadsheet(form: keyof typeof packed, next: Chance): Tried {
  const file = packed[form];
  if (next() < 0.5) return foreign(spoiledBytes(file, next), `a.${form}`);
  const parts = unzipSync(file);
  const name = pick(Object.keys(parts), next);
  const part = parts[name]!;
  const spoiled =
    next() < 0.5
      ? spoiledBytes(part, next)
      : new TextEncoder().encode(mutated(strFromU8(part), odd, next));
  return foreign(zipSync({ ...parts, [name]: spoiled }, { level: 1 }), `a.${form}`);
}

const tables = [
  'Point,Reading,Note\nKey side,"f/5.6, about",\nFill,250 lx,"a ""quoted"" one"\n',
  'Punkt;Wert\nFührung;2,8\nFüllung;=SUMME(A1:A2)\n\n"a\nb";1.234,5\n',
  'A\tB\n1\t=B1*2\n2024-05-01\tTRUE\n',
];

function table(next: Chance): Tried {
  const text = mutated(pick(tables, next), odd, next);
  const bytes = new TextEncoder().encode(text);
  return foreign(next() < 0.5 ? bytes : spoiledBytes(bytes, next), 'a.csv');
}

const walkFolder = join(root, 'tests/support/walks');
const walks = readdirSync(walkFolder)
  .filter((name) => name.endsWith('.csv'))
  .map((name) => readFileSync(join(walkFolder, name), 'utf8'));

function walk(next: Chance): Tried {
  const text = mutated(pick(walks, next), odd, next);
  const read = readWalk(text);
  if ('reason' in read) return refused(text, read.reason);
  const unsaid = read.leftOut.find((line) => !/^\S.*\.$/su.test(line));
  return taken(text, unsaid);
}

const throwFolder = join(root, 'tests/standards/photometric-files');
const throws = readdirSync(throwFolder).map((file) =>
  readFileSync(join(throwFolder, file), 'latin1'),
);

export const fileDoors: readonly Door[] = [
  { name: 'xlsx', share: 3, takes: 5, tried: (next) => spreadsheet('xlsx', next) },
  { name: 'ods', share: 3, takes: 5, tried: (next) => spreadsheet('ods', next) },
  { name: 'table', share: 10, takes: 50, tried: table },
  { name: 'walk', share: 10, takes: 5, tried: walk },
  {
    ...{ name: 'photometric', share: 8, takes: 2 },
    tried: (next) => photometric(pick(throws, next), next),
  },
  {
    ...{ name: 'spectra', share: 4, takes: 2 },
    tried: (next) => spectra(pick(sampleSpectra, next).text, next),
  },
];
