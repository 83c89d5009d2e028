import { columnLetters } from '../../../src/formula/address.ts';
import { copyCells } from '../../../src/book/make/copy.ts';
import { cutCells } from '../../../src/book/make/cut.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { fillCells } from '../../../src/book/make/fill.ts';
import { insertLines, moveLines, removeLines } from '../../../src/book/make/lines.ts';
import type { Made } from '../../../src/book/make/made.ts';
import { defineName, removeName, renameName } from '../../../src/book/make/names.ts';
import {
  addSheet,
  describeSheet,
  duplicateSheet,
  freeSheetName,
  moveSheet,
  removeSheet,
} from '../../../src/book/make/sheets.ts';
import type { MSheet } from './model.ts';
import { newSheet, parse } from './model.ts';
import type { Rect } from './modelmoves.ts';
import * as on from './modelmoves.ts';
import type { Pair } from './pair.ts';
import type { Random } from './random.ts';

const rows = 12;
const columns = 7;
const nameWords = ['key_side', 'Fill_side', 'back_light', 'Window_left'];
const sheetWords = ['Walk', 'Ice house', 'Plan', 'Boat shed', 'Loft'];

type Move = (pair: Pair, random: Random) => void;

/** What a person may do next; those listed more often happen more often. */
const moves: readonly (readonly [number, Move])[] = [
  [30, type],
  [6, typeSeveral],
  [6, fill],
  [6, copy],
  [6, cut],
  [4, sort],
  [6, insert],
  [6, remove],
  [6, move],
  [1, addOrRemoveSheet],
  [1, renameOrMoveSheet],
  [2, defineOrRemoveName],
  [2, rename],
  [8, undoSome],
  [6, redoSome],
];
const bag = moves.flatMap(([weight, play]) => Array.from({ length: weight }, () => play));

export function playRandomMove(pair: Pair, random: Random): string {
  const play = random.pick(bag);
  play(pair, random);
  return play.name;
}

function cell(random: Random): { row: number; column: number } {
  return { row: random.below(rows), column: random.below(columns) };
}

function rect(random: Random, most = 4): Rect {
  const { row, column } = cell(random);
  return { top: row, left: column, height: 1 + random.below(most), width: 1 + random.below(most) };
}

function address(random: Random, { row, column }: { row: number; column: number }): string {
  const dollar = () => (random.chance(0.25) ? '$' : '');
  return dollar() + columnLetters(column) + dollar() + String(row + 1);
}

function operand(pair: Pair, random: Random): string {
  const other = random.chance(0.25) ? random.pick(pair.sheets).name : undefined;
  const prefix = other === undefined ? '' : /^[A-Za-z]+$/.test(other) ? `${other}!` : `'${other}'!`;
  const roll = random.unit();
  if (roll < 0.4) return prefix + address(random, cell(random));
  if (roll < 0.75) {
    const { top, left, height, width } = rect(random, 5);
    const last = { row: top + height - 1, column: left + width - 1 };
    return `SUM(${prefix}${address(random, { row: top, column: left })}:${address(random, last)})`;
  }
  if (roll < 0.8)
    return `SUM(${prefix}${columnLetters(random.below(3))}:$${columnLetters(3 + random.below(3))})`;
  if (roll < 0.85)
    return `SUM(${prefix}$${String(1 + random.below(3))}:${String(4 + random.below(4))})`;
  return roll < 0.95 ? random.pick(nameWords) : String(random.below(100));
}

function text(pair: Pair, random: Random): string {
  const roll = random.unit();
  if (roll < 0.1) return '';
  if (roll < 0.3) return String(random.below(20));
  if (roll < 0.4) return `${random.pick(['Key', 'Bench', 'Window'])} ${String(random.below(9))}`;
  const terms = Array.from({ length: 1 + random.below(3) }, () => operand(pair, random));
  return `=${terms.join(random.pick(['+', ' * ', '-']))}`;
}

function typeTexts(
  pair: Pair,
  sheet: MSheet,
  texts: { row: number; column: number; text: string }[],
) {
  const { id } = pair.sheet(sheet);
  const entries = texts.map((entry) => ({ ...entry, sheet: id }));
  const made = enter(pair.document, pair.means, entries);
  if (!made.ok) throw new Error(made.reason);
  pair.both(made, () => {
    for (const { row, column, text: typed } of texts)
      on.type(pair.model, sheet, row, column, typed);
  });
}

function type(pair: Pair, random: Random): void {
  typeTexts(pair, random.pick(pair.sheets), [{ ...cell(random), text: text(pair, random) }]);
}

function typeSeveral(pair: Pair, random: Random): void {
  const { top, left, height, width } = rect(random);
  const texts = Array.from({ length: height * width }, (_, i) => ({
    row: top + Math.floor(i / width),
    column: left + (i % width),
    text: random.chance(0.4) ? String(i + 1) : text(pair, random),
  }));
  typeTexts(pair, random.pick(pair.sheets), texts);
}

function fill(pair: Pair, random: Random): void {
  const sheet = random.pick(pair.sheets);
  const from = rect(random, 3);
  const direction = random.pick(['down', 'up', 'right', 'left'] as const);
  const count = 1 + random.below(4);
  const region = { ...from, sheet: pair.sheet(sheet).id };
  pair.both(fillCells(pair.document, pair.means, region, direction, count), () => {
    on.fill(sheet, from, direction, count);
  });
}

function copy(pair: Pair, random: Random): void {
  const [from, to] = [random.pick(pair.sheets), random.pick(pair.sheets)];
  const [source, target] = [rect(random, 3), rect(random, 6)];
  const regions = [
    { ...source, sheet: pair.sheet(from).id },
    { ...target, sheet: pair.sheet(to).id },
  ] as const;
  pair.both(copyCells(pair.document, pair.means, ...regions), () => {
    on.copy(from, source, to, target);
  });
}

function cut(pair: Pair, random: Random): void {
  const from = random.pick(pair.sheets);
  const to = random.chance(0.7) ? from : random.pick(pair.sheets);
  const source = rect(random);
  const { row, column } = cell(random);
  const region = { ...source, sheet: pair.sheet(from).id };
  const made = cutCells(pair.document, pair.means, region, {
    sheet: pair.sheet(to).id,
    row,
    column,
  });
  pair.both(made, () => {
    on.cut(pair.model, from, source, to, row, column);
  });
}

function sort(pair: Pair, random: Random): void {
  const model = random.pick(pair.sheets);
  const sheet = pair.sheet(model);
  const { top, left, height, width } = rect(random, 6);
  const block = {
    sheet: sheet.id,
    rows: sheet.rows.ids.slice(top, top + height),
    columns: sheet.columns.ids.slice(left, left + width),
  };
  if (block.rows.length < 2 || block.columns.length === 0) return;
  const order = random.shuffled(block.rows.map((_, i) => i));
  const made: Made = {
    ok: true,
    transaction: { label: 'Sort', steps: [{ kind: 'sort', block, order }] },
  };
  const sorted = { top, left, height: block.rows.length, width: block.columns.length };
  pair.both(made, () => {
    on.sort(model, sorted, order);
  });
}

function insert(pair: Pair, random: Random): void {
  const model = random.pick(pair.sheets);
  const axis = random.chance(0.6) ? 'rows' : 'columns';
  const at = random.below(axis === 'rows' ? rows : columns);
  const count = 1 + random.below(2);
  pair.both(insertLines(pair.document, pair.means, pair.sheet(model).id, axis, at, count), () => {
    on.insert(model, axis, at, count);
  });
}

function someLines(random: Random, axis: on.AxisName): number[] {
  const most = axis === 'rows' ? rows : columns;
  const at = random.below(most);
  const run = Array.from({ length: 1 + random.below(3) }, (_, i) => at + i);
  return random.chance(0.2) ? [...new Set([...run, random.below(most)])] : run;
}

function remove(pair: Pair, random: Random): void {
  const model = random.pick(pair.sheets);
  const axis = random.chance(0.6) ? 'rows' : 'columns';
  const lines = someLines(random, axis);
  pair.both(removeLines(pair.document, pair.sheet(model).id, axis, lines), () => {
    on.remove(model, axis, lines);
  });
}

function move(pair: Pair, random: Random): void {
  const model = random.pick(pair.sheets);
  const axis = random.chance(0.6) ? 'rows' : 'columns';
  const lines = someLines(random, axis);
  const to = random.below(axis === 'rows' ? rows : columns);
  const { id } = pair.sheet(model);
  pair.both(moveLines(pair.document, pair.means, id, axis, lines, to), () => {
    on.move(pair.model, model, axis, lines, to);
  });
}

function addOrRemoveSheet(pair: Pair, random: Random): void {
  const model = random.pick(pair.sheets);
  const { id } = pair.sheet(model);
  const at = pair.model.sheets.indexOf(model);
  if (pair.sheets.length > 3) {
    pair.both(removeSheet(pair.document, id), () => {
      model.gone = true;
      model.cells = [];
    });
  } else if (random.chance(0.5)) {
    const name = freeSheetName(pair.document, random.pick(sheetWords));
    const place = pair.sheets.indexOf(model);
    pair.both(addSheet(pair.document, pair.means, { name }, place), () => {
      pair.model.sheets.splice(at, 0, newSheet(name));
    });
  } else {
    const name = freeSheetName(pair.document, model.name);
    pair.both(duplicateSheet(pair.document, pair.means, id), () => {
      on.duplicate(pair.model, model, name);
    });
  }
}

function renameOrMoveSheet(pair: Pair, random: Random): void {
  const model = random.pick(pair.sheets);
  const { id } = pair.sheet(model);
  if (random.chance(0.5)) {
    const name = freeSheetName(pair.document, random.pick(sheetWords));
    pair.both(describeSheet(pair.document, id, { name }), () => {
      model.name = name;
    });
    return;
  }
  const to = random.below(pair.sheets.length);
  pair.both(moveSheet(pair.document, id, to), () => {
    const others = pair.sheets.filter((sheet) => sheet !== model);
    const gone = pair.model.sheets.filter((sheet) => sheet.gone);
    pair.model.sheets = [...others.toSpliced(to, 0, model), ...gone];
  });
}

function defineOrRemoveName(pair: Pair, random: Random): void {
  const known = pair.document.names;
  if (known.length > 0 && random.chance(0.4)) {
    const { id, name } = random.pick(known);
    pair.both(removeName(pair.document, id), () => {
      pair.model.names = pair.model.names.filter((each) => each.name !== name);
    });
    return;
  }
  const name = random.pick(nameWords);
  if (pair.document.named(name)) return;
  const model = random.pick(pair.sheets);
  const sheet = pair.sheet(model);
  const { top, left, height, width } = rect(random);
  const region = { sheet: sheet.id, top, left, height, width };
  const made = defineName(pair.document, pair.means, name, region);
  pair.both(made, () => {
    const first = `$${columnLetters(left)}$${String(top + 1)}`;
    const last = `$${columnLetters(left + width - 1)}$${String(top + height)}`;
    const cells = height * width === 1 ? first : `${first}:${last}`;
    const parts = parse(pair.model, model, `='${model.name}'!${cells}`);
    pair.model.names.push({ name, parts });
  });
}

function rename(pair: Pair, random: Random): void {
  const [known] = random.shuffled(pair.document.names);
  const name = random.pick([...nameWords, 'Other_light']);
  if (!known || pair.document.named(name)) return;
  pair.both(renameName(pair.document, pair.means, known.id, name), () => {
    on.renameName(pair.model, known.name, name);
  });
}

function undoSome(pair: Pair, random: Random): void {
  const times = random.chance(0.1) ? random.below(20) : 1;
  for (let i = 0; i < times; i++) pair.undo();
}

function redoSome(pair: Pair, random: Random): void {
  const times = random.chance(0.3) ? random.below(20) : 1;
  for (let i = 0; i < times; i++) pair.redo();
}
