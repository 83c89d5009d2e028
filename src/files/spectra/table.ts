import { Fault, numberFrom } from '../photometric/fault.ts';
import { shortened } from '../photometric/words.ts';
import { meaningOf, type Found, type Row } from './found.ts';
import { words } from '../../words/words.ts';

interface Line {
  readonly cells: readonly string[];
  /** Counted from 1. */
  readonly line: number;
}

interface Manner {
  readonly split: RegExp;
  readonly decimal: '.' | ',';
}

/** More columns of numbers than this are wavelengths that run across. */
const acrossFrom = 20;

/** Remarks begin like this in the tables of many programs. */
const remark = /^\s*(?:#|!|\/\/|\*|%)/;

/**
 * Reads a table of wavelengths and powers: two columns or more, each further column a spectrum; or
 * wavelengths across and a row for each spectrum. What stands above it is a heading or a remark.
 */
export function readTable(lines: readonly string[]): readonly Found[] {
  const manner = mannerOf(lines);
  const all = lines
    .map((text, index) => ({ cells: cellsOf(text, manner), line: index + 1, text }))
    .filter(({ text }) => text.trim() !== '');
  const written = all.filter(({ text }) => !remark.test(text));
  const start = written.findIndex(
    (line, index) =>
      isWide(line, manner) || (isData(line, manner) && isData(written[index + 1], manner)),
  );
  if (start < 0) throw new Fault(lines.length, words.spectra.noTable);
  const above = all.filter(({ line }) => line < written[start]!.line);
  const data = written.slice(start);
  if (isWide(data[0]!, manner)) return across(data, manner, textOf(above));
  return down(data, manner, written.slice(0, start).at(-1), textOf(above));
}

const textOf = (lines: readonly { readonly text: string }[]): string =>
  lines.map(({ text }) => text).join('\n');

/** Semicolon before tab before comma; a comma inside numbers is a decimal comma where it parts nothing. */
function mannerOf(lines: readonly string[]): Manner {
  const begun = lines.filter((text) => /^[\s"]*[-+.]?\d/.test(text));
  const data = begun.length > 0 ? begun : lines;
  const some = (pattern: RegExp) => data.some((text) => pattern.test(text));
  const decimal = some(/\d,\d/) && !some(/\d\.\d/) ? ',' : '.';
  if (some(/;/)) return { split: /;/, decimal };
  if (some(/\t/)) return { split: /\t/, decimal };
  if (some(/,/)) {
    // "380 0,12": blanks part, commas are decimal.
    const blanks = data.every((text) => /^\s*[-+\d.,]+\s+[-+\d.,eE\s]+$/.test(text));
    if (!blanks || some(/,\s/)) return { split: /,/, decimal: '.' };
  }
  return { split: /\s+/, decimal };
}

function cellsOf(text: string, { split }: Manner): readonly string[] {
  const cells = text
    .trim()
    .split(split)
    .map((cell) =>
      cell
        .trim()
        .replace(/^"(.*)"$/s, '$1')
        .trim(),
    );
  while (cells.length > 0 && cells.at(-1) === '') cells.pop();
  return cells;
}

function numberIn(cell: string | undefined, { decimal }: Manner): number {
  if (cell === undefined) return Number.NaN;
  return numberFrom((decimal === ',' ? cell.replace(',', '.') : cell).replace(/\s*nm$/i, ''));
}

function isData(line: Line | undefined, manner: Manner): boolean {
  if (!line || line.cells.length < 2) return false;
  return [0, 1].every((column) => Number.isFinite(numberIn(line.cells[column], manner)));
}

/** A row of wavelengths, perhaps with a word before it. */
function isWide({ cells }: Line, manner: Manner): boolean {
  return cells.length > acrossFrom && Number.isFinite(numberIn(cells.at(-1), manner));
}

function number(line: Line, column: number, what: string, manner: Manner): number {
  const cell = line.cells[column];
  const value = numberIn(cell, manner);
  if (Number.isFinite(value)) return value;
  const said =
    cell === undefined || cell === ''
      ? words.spectra.empty(what)
      : words.photometric.noNumber(shortened(cell), what);
  throw new Fault(line.line, said);
}

function down(
  data: readonly Line[],
  manner: Manner,
  heading: Line | undefined,
  above: string,
): readonly Found[] {
  const width = data[0]!.cells.length;
  const headings = heading?.cells.length === width ? heading.cells : [];
  for (const line of data)
    if (line.cells.length > width)
      throw new Fault(line.line, words.spectra.moreCells(line.cells.length, width));
  const lengths = data.map((line) => number(line, 0, words.spectra.aWavelength, manner));
  return Array.from({ length: width - 1 }, (_, index) => {
    const name = headings[index + 1] ?? '';
    const { measures, factor } = meaningOf(name === '' || width === 2 ? `${above}` : name);
    const rows = data.map((line, at): Row => ({
      nm: lengths[at]!,
      value: factor * number(line, index + 1, words.spectra.aPower, manner),
      line: line.line,
    }));
    return { name: width === 2 ? '' : name, measures, rows };
  });
}

function across(data: readonly Line[], manner: Manner, above: string): readonly Found[] {
  const [first, ...rest] = data as readonly [Line, ...Line[]];
  const skip = Number.isFinite(numberIn(first.cells[0], manner)) ? 0 : 1;
  const lengths = first.cells
    .slice(skip)
    .map((_, index) => number(first, index + skip, words.spectra.aWavelength, manner));
  if (rest.length === 0) throw new Fault(first.line, words.spectra.noPowers);
  return rest.map((line) => {
    const label = skip === 1 ? (line.cells[0] ?? '') : '';
    if (line.cells.length > lengths.length + skip)
      throw new Fault(line.line, words.spectra.moreCells(line.cells.length, lengths.length + skip));
    const { measures, factor } = meaningOf(`${above}\n${label}`);
    const rows = lengths.map((nm, index) => ({
      nm,
      value: factor * number(line, index + skip, words.spectra.aPower, manner),
      line: line.line,
    }));
    return { name: label, measures, rows };
  });
}
