import { readEntry } from '../../../functions/quantities/entry.ts';
import { quantityNames } from '../../../functions/quantities/names.ts';
import { catalogue } from '../../../functions/index.ts';
import { usualSettings, writingSettings } from '../../../src/book/settings.ts';
import { htmlTable } from '../../../src/files/htmlTable.ts';
import { formulaFrom } from '../../../src/formula/bind.ts';
import { writeFormula } from '../../../src/formula/write.ts';
import { PlainLayout } from '../../unit/formula/layout.ts';
import { type Chance, mutated, pick } from '../mutated.ts';
import { refused, taken, type Tried } from '../tried.ts';
import type { Door } from './door.ts';

const odd = [
  ...['=', '(', ')', '((((', ',', ';', '{', '}', '"', "'", '!', ':', '#REF!', '@', '%', '^-'],
  ...['1e999', '-', '\u0000', '🎬', '\u202E', 'Walk!A1', "'Ice house'!$B$2:C", 'A1:A1048577'],
  ...['⅓', 'f/', '1/', '°', '+02:00', '31.02.2026', '١٢', '__proto__', 'constructor', ' lx', 'K'],
];

const formulas = catalogue.map(({ name, parameters }) => {
  const args = parameters.map((_, index) => `${String.fromCharCode(65 + index)}1`);
  return `=${name}(${args.join(',')})+Walk!B2*SUM('Ice house'!A1:C9)`;
});
const layout = new PlainLayout();

/** Written out and read again it is the same formula. */
function formula(next: Chance): Tried {
  const text = `=${mutated(pick(formulas, next).slice(1), odd, next)}`;
  const read = formulaFrom(text, 'walk', layout);
  if ('reason' in read) return refused(text, read.reason);
  const written = writeFormula(read, 'walk', layout);
  const again = formulaFrom(written, 'walk', layout);
  if ('reason' in again) return taken(text, `${written} is refused: ${again.reason}`);
  const twice = writeFormula(again, 'walk', layout);
  return taken(text, twice === written ? undefined : `${written} becomes ${twice}.`);
}

const entries = [
  ...['5.6', 'f/5.6 1/3', 'f/2.8 and 0.7', '250 lx', '1,5 fc', '12\' 6"', '3200 K', '-1 1/2'],
  ...['1/50', '180°', '45 %', '2026-06-21 14:10', '0:30', 'ISO 800', '€12.50', '4:1', 'Duv -0.002'],
];
const writing = (['.', ','] as const).map((decimal) =>
  writingSettings({ ...usualSettings, decimal }),
);

/** What is read as a number is one. */
function entry(next: Chance): Tried {
  const text = mutated(pick(entries, next), odd, next);
  const quantity = next() < 0.3 ? undefined : pick(quantityNames, next);
  const read = readEntry(text, quantity, pick(writing, next));
  if ('reason' in read) return refused(text, read.reason);
  const { content } = read;
  const isNone = content.kind === 'number' && !Number.isFinite(content.value);
  return taken(text, isNone ? `It is read as ${String(content.value)}.` : undefined);
}

const pasted = [
  '<table><tr><td>Key &amp; fill<td>5.6</td></tr><tr><th>4&#46;5&nbsp;lx<td>=A1</tr></table>',
  '<html><style>td{}</style><!-- a --><table><TR><TD style="x">1<br>2</TD></TR></table>',
];

/** Words only: what is markup there is none in a cell. */
function html(next: Chance): Tried {
  const text = mutated(
    pick(pasted, next),
    [...odd, '<td>', '<script>', '&#x110000;', '<!--'],
    next,
  );
  const rows = htmlTable(text);
  const strange = rows.flat().find((cell) => typeof cell !== 'string');
  return rows.length > 0 ? taken(text, strange) : refused(text, 'No table.');
}

export const typedDoors: readonly Door[] = [
  { name: 'formula', share: 20, takes: 2, tried: formula },
  { name: 'entry', share: 40, takes: 20, tried: entry },
  { name: 'pasted table', share: 20, takes: 20, tried: html },
];
