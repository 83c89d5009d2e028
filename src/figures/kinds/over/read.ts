import type { QuantityName } from '../../../../functions/quantities/names.ts';
import { words } from '../../../words/words.ts';
import type { Block, Datum, Given, Undrawn } from '../../figure.ts';
import { numberOf, quantityIn } from '../cells.ts';
import { sayer } from './sayer.ts';

export interface Place {
  readonly at: number;
  readonly value: number;
}

/** One column of results. A case without a number breaks the line. */
export interface Line {
  readonly name: string;
  readonly quantity: QuantityName | undefined;
  readonly pieces: readonly (readonly Place[])[];
}

export interface Family {
  readonly caption: string;
  readonly along: QuantityName | undefined;
  /** Lines that measure the same share a picture. */
  readonly pictures: readonly (readonly Line[])[];
  readonly now: number | undefined;
  /** Columns that hold no numbers. */
  readonly wordy: readonly string[];
  readonly further: number;
}

/** More lines are told apart by nobody. */
const most = 10;

export function readFamily({ inputs, writing }: Given): Family | Undrawn {
  const along = inputs['along'] ?? [];
  const results = inputs['results'] ?? [];
  const wide = Math.max(0, ...results.map((row) => row.length));
  const nameOf = (column: number): string => {
    const datum = inputs['names']?.[0]?.[column];
    if (typeof datum?.value === 'number')
      return sayer(datum.quantity, writing)(datum.value).replace(/^\+/, '');
    return typeof datum?.value === 'string' && datum.value !== ''
      ? datum.value
      : words.over.column(column + 1);
  };
  const all = Array.from({ length: wide }, (_, column): Line => {
    const own = results.map((row) => [row[column] ?? { value: null }]);
    return { name: nameOf(column), quantity: quantityIn(own), pieces: piecesOf(along, own) };
  });
  const lines = all.filter(({ pieces }) => pieces.length > 0);
  if (lines.length === 0) return { reason: words.over.none };
  const drawn = lines.slice(0, most);
  const quantities = [...new Set(drawn.map(({ quantity }) => quantity))];
  const caption = inputs['caption']?.[0]?.[0]?.value;
  return {
    caption: typeof caption === 'string' ? caption : '',
    along: quantityIn(along),
    pictures: quantities.map((one) => drawn.filter(({ quantity }) => quantity === one)),
    now: numberOf(inputs['now']?.[0]?.[0]),
    wordy: all.filter(({ pieces }) => pieces.length === 0).map(({ name }) => name),
    further: lines.length - drawn.length,
  };
}

/** In the order of the values, whatever the order of the rows. */
function piecesOf(along: Block, results: Block): readonly (readonly Place[])[] {
  const rows = along
    .flatMap(([datum], row) => {
      const at = numberOf(datum);
      const own: Datum | undefined = results[row]?.[0];
      return at === undefined ? [] : [{ at, value: numberOf(own) }];
    })
    .toSorted((a, b) => a.at - b.at);
  const pieces: Place[][] = [];
  let open: Place[] | undefined;
  for (const { at, value } of rows) {
    if (value === undefined) open = undefined;
    else if (open) open.push({ at, value });
    else pieces.push((open = [{ at, value }]));
  }
  return pieces;
}
