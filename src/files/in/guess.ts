import { unitAnywhere } from '../../../functions/quantities/lookUp.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import { toBase } from '../../../functions/quantities/unit.ts';
import { units } from '../../../functions/quantities/units.ts';
import { exactMark } from '../../../functions/marks/index.ts';
import { columnLetters } from '../../formula/address.ts';
import { readFormula } from '../../formula/read.ts';
import type { NumberLook, PlainBook, PlainCell } from '../plain/types.ts';
import { words } from '../../words/words.ts';

/** What numbers of a column measure, as their format or the words above them say. */
export interface Guess {
  readonly id: string;
  readonly sheet: string;
  readonly column: number;
  /** `B`, and the words above. */
  readonly place: string;
  readonly quantity: QuantityName;
  /** The unit they are written in; empty for a bare number. */
  readonly unit: string;
  readonly from: 'format' | 'heading';
  readonly count: number;
  /** Why it is not taken unless somebody says so. */
  readonly doubt?: string;
}

export interface Guessed {
  readonly guesses: readonly Guess[];
  /** The guess for a cell, as `sheet row column`. */
  readonly of: ReadonlyMap<string, string>;
}

interface Meaning {
  readonly quantity: QuantityName;
  readonly unit: string;
}

/** What the words around a number say that it measures. */
export function meaningOfLook(look: NumberLook): Meaning | undefined {
  if (look.moment) return { quantity: 'dateTime', unit: '' };
  const [before, after] = [look.before?.trim() ?? '', look.after?.trim() ?? ''];
  if (look.percent) return before + after === '' ? { quantity: 'share', unit: '' } : undefined;
  if (before === 'f/' || before === 'T') return { quantity: 'fNumber', unit: '' };
  if (before === 'ISO' || before === 'EI') return { quantity: 'iso', unit: 'ISO' };
  if (before === '×') return { quantity: 'factor', unit: '×' };
  if (before === 'Duv') return { quantity: 'duv', unit: units.duv.base };
  if (after === ':1') return { quantity: 'ratio', unit: ':1' };
  if (after === '°') return { quantity: 'angle', unit: '°' };
  if (/^[A-Z]{3}$/.test(after) && before === '') return { quantity: 'money', unit: '' };
  return after === '' || before !== '' ? undefined : named(after);
}

/** Words over a column that say what it holds, without a unit. */
const headings: readonly (readonly [RegExp, Meaning])[] = [
  [/^(?:iso|ei|speed)$/i, { quantity: 'iso', unit: 'ISO' }],
  [/^(?:f-?number|f-?stop|t-?stop|f|stop)$/i, { quantity: 'fNumber', unit: '' }],
  [/^(?:frame rate|frames a second)$/i, { quantity: 'frameRate', unit: 'fps' }],
  [/^colou?r temperature$/i, { quantity: 'colourTemperature', unit: 'K' }],
];

/** `Key side (lx)`, `Distance [ft]`, `Distance in m`, `Level, fc`, `ISO`. */
export function meaningOfHeading(text: string): Meaning | undefined {
  const said = text.trim();
  const known = headings.find(([pattern]) => pattern.test(said));
  if (known) return known[1];
  const [, bracketed, behind] =
    /[([]\s*([^()[\]]+?)\s*[)\]]$|(?:\sin\s|,\s*)(\S+)$/iu.exec(said) ?? [];
  const unit = bracketed ?? behind ?? said;
  if (unit === '%') return { quantity: 'share', unit: '%' };
  // A lone letter is a unit only in brackets.
  return bracketed !== undefined || unit.length > 1 ? named(unit) : undefined;
}

function named(spelling: string): Meaning | undefined {
  const found = unitAnywhere(spelling);
  return found && { quantity: found.quantity, unit: found.unit.symbol };
}

/** A number as it is kept here: in the base unit, and a mark as the exact f-number it means. */
export function kept({ quantity, unit }: Meaning, value: number): number {
  if (quantity === 'fNumber') return exactMark(value);
  const found = units[quantity].units.find(({ symbol }) => symbol === unit);
  return found ? toBase(found, value) : value;
}

const doubtful = words.files.formulasWork;

/** Guesses for every number of the book. */
export function guess(book: PlainBook): Guessed {
  const guesses = new Map<string, Guess>();
  const of = new Map<string, string>();
  const read = columnsRead(book);
  for (const sheet of book.sheets) {
    if (sheet.hidden) continue;
    const above = new Headings();
    for (const cell of sheet.cells.toSorted((a, b) => a.row - b.row)) {
      const heading = above.over(cell);
      if (typeof cell.value !== 'number') continue;
      const said = cell.look && meaningOfLook(cell.look);
      const meaning = said ?? (heading === '' ? undefined : meaningOfHeading(heading));
      if (!meaning) continue;
      const id = [
        sheet.name,
        cell.column,
        meaning.quantity,
        meaning.unit,
        said ? '' : heading,
      ].join('\n');
      const changes = kept(meaning, cell.value) !== cell.value;
      // What a formula comes to cannot be turned into another unit.
      if (changes && cell.formula !== undefined && !said) continue;
      const before = guesses.get(id);
      const doubt = changes && read.has(`${sheet.name.toLowerCase()} ${String(cell.column)}`);
      guesses.set(id, {
        ...(before ?? {
          id,
          sheet: sheet.name,
          column: cell.column,
          place: `${columnLetters(cell.column)}${heading === '' ? '' : `, ${heading}`}`,
          ...meaning,
          from: said ? 'format' : 'heading',
        }),
        count: (before?.count ?? 0) + 1,
        ...(doubt && { doubt: doubtful }),
      });
      of.set(`${sheet.name} ${String(cell.row)} ${String(cell.column)}`, id);
    }
  }
  return { guesses: [...guesses.values()], of };
}

/** The nearest text above a number in its column, for cells handed over row by row. */
class Headings {
  readonly #last = new Map<number, string>();

  over({ column, value }: PlainCell): string {
    const heading = this.#last.get(column) ?? '';
    if (typeof value === 'string' && value.trim() !== '')
      this.#last.set(column, value.trim().slice(0, 60));
    return heading;
  }
}

/** Columns that some formula of the book reads, as `sheet column`. */
function columnsRead({ sheets, names }: PlainBook): ReadonlySet<string> {
  const found = new Set<string>();
  const note = (formula: string, own: string) => {
    const read = readFormula(formula, Infinity);
    if ('reason' in read) return;
    for (const reference of read.references) {
      if (reference.kind === 'name') continue;
      const [from, to] =
        reference.kind === 'cell'
          ? [reference.at.column.index, reference.at.column.index]
          : reference.kind === 'range'
            ? [reference.from.column.index, reference.to.column.index]
            : reference.kind === 'columns'
              ? [reference.from.index, reference.to.index]
              : [0, 200];
      const sheet = (reference.sheet ?? own).toLowerCase();
      for (
        let column = Math.min(from, to);
        column <= Math.max(from, to) && column < 1000;
        column += 1
      )
        found.add(`${sheet} ${String(column)}`);
    }
  };
  for (const { name, cells } of sheets)
    for (const { formula } of cells) if (formula !== undefined) note(formula, name);
  for (const { formula } of names) note(formula, '');
  return found;
}
