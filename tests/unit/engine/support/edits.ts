import { addressAt } from '../../../../src/book/look.ts';
import { copyCells } from '../../../../src/book/make/copy.ts';
import { cutCells } from '../../../../src/book/make/cut.ts';
import { enter } from '../../../../src/book/make/enter.ts';
import { fillCells } from '../../../../src/book/make/fill.ts';
import { insertLines, moveLines, removeLines } from '../../../../src/book/make/lines.ts';
import { defineName, removeName, renameName } from '../../../../src/book/make/names.ts';
import { setColumnQuantity, setQuantity } from '../../../../src/book/make/properties.ts';
import {
  addSheet,
  describeSheet,
  duplicateSheet,
  moveSheet,
  removeSheet,
} from '../../../../src/book/make/sheets.ts';
import { sortRegion } from '../../../../src/book/make/sort.ts';
import type { Transaction } from '../../../../src/book/types.ts';
import type { openBook } from './openBook.ts';

type Opened = ReturnType<typeof openBook>;

/** Random numbers from 0 to 999, which an edit takes as it needs them. */
export type Dice = readonly number[];

const rows = 9;
const columns = 6;
const lineWords = ['rows', 'columns'] as const;
const directions = ['down', 'up', 'right', 'left'] as const;
const quantities = ['illuminance', 'time', 'fNumber', 'stops', null] as const;
const names = ['Key', 'Fill_side', 'Window'];

/** Takes dice in turn; when they run out, zeros. */
class Hand {
  #next = 0;
  readonly #dice: Dice;

  constructor(dice: Dice) {
    this.#dice = dice;
  }

  below(limit: number): number {
    return (this.#dice[this.#next++] ?? 0) % limit;
  }

  of<Item>(items: readonly Item[]): Item {
    return items[this.below(items.length)] as Item;
  }
}

type Edit = (
  opened: Opened,
  sheet: string,
  hand: Hand,
) => { readonly transaction: Transaction } | object;

const spot = (sheet: string, hand: Hand) => ({
  sheet,
  row: hand.below(rows),
  column: hand.below(columns),
});

function region(sheet: string, hand: Hand) {
  const { row: top, column: left } = spot(sheet, hand);
  return { sheet, top, left, height: 1 + hand.below(3), width: 1 + hand.below(2) };
}

function address(hand: Hand): string {
  const dollar = () => (hand.below(4) === 0 ? '$' : '');
  const plain = addressAt(spot('', hand));
  return plain.replace(/^([A-Z]+)(\d+)$/, (_, column, row) => dollar() + column + dollar() + row);
}

function anywhere({ document }: Opened, hand: Hand): string {
  const prefix = hand.below(4) === 0 ? `'${hand.of(document.sheets).properties.name}'!` : '';
  return prefix + address(hand);
}

/** Formulas of every kind that a graph of cells has trouble with. */
function formula(opened: Opened, hand: Hand): string {
  const cell = () => anywhere(opened, hand);
  const range = () => `${anywhere(opened, hand)}:${address(hand)}`;
  return hand.of([
    () => `=${cell()}*2`,
    () => `=${cell()}+${cell()}`,
    () => `=SUM(${range()})`,
    () => `=SUM(${range()})+MAX(${range()})`,
    () => `=STOPS(${cell()},${cell()})`,
    () => `=SPREAD(${range()})`,
    () => `=VERDICT(${cell()},${cell()})`,
    () => `=EXPOSURETIME(${cell()},24)`,
    () => `=IF(${cell()}>2,${cell()},"low")`,
    () => `=COUNT(B:C)+SUM(2:3)`,
    () => `=${hand.of(names)}+1`,
    () => `=SUM(${hand.of(names)})`,
    () => `=SUMIF(${range()},">1")`,
    () => `=SUM(FILTER(${range()},A1:A3>1))`,
    () => `=VLOOKUP(${cell()},A1:C6,2,FALSE)`,
    () => `=INDEX(${range()},1,1)`,
    () => `=SUMPRODUCT((A1:A4>1)*B1:B4)`,
    () => `=ROW(${cell()})+COLUMN()`,
    () => `=IFERROR(${cell()}/${cell()},-1)`,
  ])();
}

function text(opened: Opened, hand: Hand): string {
  return hand.below(3) > 0
    ? formula(opened, hand)
    : hand.of(['', '4', '250 lx', 'f/5.6', 'Bench', '0', 'TRUE', '2.5']);
}

const edits: readonly Edit[] = [
  ...Array.from({ length: 8 }, (): Edit => (opened, sheet, hand) => {
    const entry = { ...spot(sheet, hand), text: text(opened, hand) };
    return enter(opened.document, opened.means, [entry]);
  }),
  ...Array.from(
    { length: 3 },
    (): Edit =>
      ({ document, means }, sheet, hand) =>
        insertLines(
          document,
          means,
          sheet,
          hand.of(lineWords),
          hand.below(rows),
          1 + hand.below(2),
        ),
  ),
  ...Array.from(
    { length: 3 },
    (): Edit =>
      ({ document }, sheet, hand) =>
        removeLines(document, sheet, hand.of(lineWords), [hand.below(rows), hand.below(columns)]),
  ),
  ({ document, means }, sheet, hand) =>
    moveLines(document, means, sheet, hand.of(lineWords), [hand.below(5)], hand.below(6)),
  ({ document, engine }, sheet, hand) =>
    sortRegion(document, region(sheet, hand), [{ column: 0 }], (place) =>
      engine.valueOf({
        sheet,
        row: document.sheet(sheet)?.rows.indexOf(place.row) ?? -1,
        column: document.sheet(sheet)?.columns.indexOf(place.column) ?? -1,
      }),
    ),
  ({ document, means }, sheet, hand) =>
    cutCells(document, means, region(sheet, hand), spot(hand.of(document.sheets).id, hand)),
  ({ document, means }, sheet, hand) =>
    copyCells(document, means, region(sheet, hand), region(hand.of(document.sheets).id, hand)),
  ({ document, means }, sheet, hand) =>
    fillCells(document, means, region(sheet, hand), hand.of(directions), 2),
  ({ document, means }, sheet, hand) =>
    setQuantity(document, means, [region(sheet, hand)], hand.of(quantities)),
  ({ document, means }, sheet, hand) =>
    setColumnQuantity(document, means, sheet, [hand.below(columns)], hand.of(quantities)),
  ({ document, means }) => (document.sheets.length > 3 ? {} : addSheet(document, means)),
  ({ document, means }, sheet) =>
    document.sheets.length > 3 ? {} : duplicateSheet(document, means, sheet),
  ({ document }, sheet) => removeSheet(document, sheet),
  ({ document }, sheet, hand) => moveSheet(document, sheet, hand.below(document.sheets.length)),
  ({ document }, sheet, hand) =>
    describeSheet(document, sheet, { name: `Ice house ${String(hand.below(9))}` }),
  ({ document }, sheet, hand) => describeSheet(document, sheet, { tolerance: hand.below(3) / 3 }),
  ({ document, means }, sheet, hand) =>
    defineName(document, means, hand.of(names), region(sheet, hand)),
  (opened, sheet, hand) =>
    defineName(opened.document, opened.means, hand.of(names), {
      text: formula(opened, hand),
      own: sheet,
    }),
  ({ document, means }, _, hand) =>
    renameName(document, means, document.names[0]?.id ?? '', hand.of(names)),
  ({ document }) => removeName(document, document.names[0]?.id ?? ''),
];

/** Does one thing that a person could do to the book; nothing where it cannot be done. */
export function edit(opened: Opened, dice: Dice): void {
  const { book, document } = opened;
  const hand = new Hand(dice);
  const kind = hand.below(edits.length + 5);
  if (kind >= edits.length + 2) book.undo();
  else if (kind >= edits.length) book.redo();
  else {
    const made = edits[kind]?.(opened, hand.of(document.sheets).id, hand);
    if (made && 'transaction' in made) book.run(made.transaction as Transaction);
  }
}
