import type { AnyDefinition } from '../../functions/define.ts';
import { catalogue } from '../../functions/index.ts';
import { cellAt, placeAt, spotOf } from '../book/look.ts';
import type { Change, Effect, Id, LinesEffect } from '../book/types.ts';
import { cellKey, type CellKey, type Model } from './model.ts';
import { calculating } from './settings.ts';
import type { Reread } from './quantities.ts';
import type { CellPlace, Recalculated } from './types.ts';

/** Above this share of the book's cells, reading the book anew is quicker than cell by cell. */
const muchShare = 0.25;
/** Below this number of cells, never. */
const muchCells = 2_000;

/** Above this number of changed cells, listeners are told that everything may have. */
const manyChanges = 5_000;

const everything: Recalculated = { all: true, cells: [], reread: 'all' };

/** Brings the calculator to where the book is after a change, by the shortest way that is sure. */
export function follow(model: Model, { effects }: Change): Recalculated {
  if (effects.some((effect) => needsBuild(model, effect)) || countShifts(effects) > 1) {
    model.build();
    return everything;
  }
  const shelved = effects.flatMap(readersOf);
  if (shelved.length > 0) model.forgetSettings();
  const shift = effects.find(isShift);
  const touched = touchedBy(model, effects, shift);
  if (touched.size > muchCells && touched.size > muchShare * cellCount(model)) {
    model.build();
    return everything;
  }
  const runs = effects.filter(isRun);
  const reread = rereadQuantities(model, effects, runs.length > 0);
  const readers = shelved.flatMap((reads) => [...shelfReaders(model, reads)]);
  const cells = recalculate(model, runs, touched, reread, readers);
  if (shift) return everything;
  const read = reread === 'all' ? reread : reread.read;
  return cells.length > manyChanges
    ? { ...everything, reread: read }
    : { all: false, cells, reread: read };
}

/** What cells measure, brought up to the change before anything is calculated from it. */
function rereadQuantities(
  model: Model,
  effects: readonly Effect[],
  moved: boolean,
): Reread | 'all' {
  const around = effects.some(({ kind }) => kind === 'lineProperties' || kind === 'areas');
  if (moved || around) {
    model.quantities.forget();
    return 'all';
  }
  return model.quantities.follow(changedQuantities(model, effects)) ?? 'all';
}

function touchedBy(
  model: Model,
  effects: readonly Effect[],
  shift: LinesEffect | undefined,
): Map<CellKey, Touched> {
  const touched = new Map<CellKey, Touched>();
  for (const effect of effects) {
    if (effect.kind !== 'cells') continue;
    for (const { row, column, content } of effect.cells)
      if (content) touch(touched, effect.sheet, row, column);
  }
  if (shift) {
    for (const key of model.broken) touchKey(touched, key);
    for (const key of newlyBroken(model, shift.sheet)) touchKey(touched, key);
    for (const [row, column] of shiftedIn(model, shift)) touch(touched, shift.sheet, row, column);
  }
  return touched;
}

/** Cells that may measure something else than before. A number for a number changes nothing. */
function changedQuantities(model: Model, effects: readonly Effect[]): readonly CellPlace[] {
  return effects.flatMap((effect) => {
    if (effect.kind !== 'cells') return [];
    const { sheet } = effect;
    return effect.cells.flatMap(({ row, column, content }): readonly CellPlace[] => {
      const spot = content ? spotOf(model.document, { sheet, row, column }) : undefined;
      const address = spot && model.address(spot);
      if (!address) return [];
      if (model.calculator.doesCellHaveFormula(address)) return [spot];
      const now = cellAt(model.document, { sheet, row, column })?.content.kind ?? 'blank';
      if (now === 'formula' || model.quantities.isOther(spot)) return [spot];
      // Ranges pass over blanks and texts, so one more or one less number can make them mixed.
      const before = typeof model.calculator.getCellValue(address);
      const counted = before === 'number' || before === 'boolean';
      return counted !== (now === 'number' || now === 'truth') ? [spot] : [];
    });
  });
}

interface Touched {
  readonly sheet: Id;
  readonly row: Id;
  readonly column: Id;
}

function touch(touched: Map<CellKey, Touched>, sheet: Id, row: Id, column: Id): void {
  touched.set(cellKey(sheet, row, column), { sheet, row, column });
}

function touchKey(touched: Map<CellKey, Touched>, key: CellKey): void {
  const [sheet = '', row = '', column = ''] = key.split(' ');
  touched.set(key, { sheet, row, column });
}

/** What HyperFormula cannot follow, or not safely: sheets, names, lines that moved, settings. */
function needsBuild(model: Model, effect: Effect): boolean {
  if (effect.kind === 'settings') return effect.keys.some((key) => calculating.has(key));
  if (effect.kind === 'linesInserted' || effect.kind === 'linesRemoved') return effect.moved;
  if (effect.kind === 'sheetProperties') return model.hasOtherTolerance(effect.sheet);
  return effect.kind === 'sheetAdded' || effect.kind === 'sheetRemoved' || effect.kind === 'name';
}

/** Functions that look things up on a shelf: a formula with one of them is to be worked out anew. */
const reads = {
  fixtures: calling(({ runWith }) => runWith !== undefined),
  spectra: calling(({ runFrom }) => runFrom !== undefined),
};

function calling(whether: (definition: AnyDefinition) => boolean): RegExp {
  const names = catalogue.flatMap((one) => (whether(one) ? [one.name] : []));
  return new RegExp(`\\b(?:${names.join('|')})\\(`);
}

function readersOf(effect: Effect): readonly RegExp[] {
  if (effect.kind !== 'shelf') return [];
  return effect.shelf === 'fixtures' || effect.shelf === 'spectra' ? [reads[effect.shelf]] : [];
}

/** Cells that look something up by name; names are written out in what the calculator reads. */
function* shelfReaders(model: Model, looking: RegExp): Iterable<CellKey> {
  for (const sheet of model.document.sheets) {
    for (const { row, column, cell } of sheet.cells()) {
      if (cell.content.kind !== 'formula') continue;
      if (looking.test(model.text(cell.content.formula, sheet.id)))
        yield cellKey(sheet.id, row, column);
    }
  }
}

/** Lines that come into use at the end are nothing to HyperFormula; those that go take cells along. */
function isRun(effect: Effect): effect is LinesEffect {
  return effect.kind === 'linesRemoved' || (effect.kind === 'linesInserted' && !effect.tail);
}

/** Lines after which others stand at another place than before. */
function isShift(effect: Effect): effect is LinesEffect {
  return isRun(effect) && !effect.tail;
}

function countShifts(effects: readonly Effect[]): number {
  return effects.filter(isShift).length;
}

function cellCount(model: Model): number {
  return model.document.sheets.reduce((count, { size }) => count + size, 0);
}

/** Formulas that point to lines of this sheet which are gone now. */
function* newlyBroken(model: Model, shifted: Id): Iterable<CellKey> {
  for (const sheet of model.document.sheets) {
    for (const { row, column, cell } of sheet.cells()) {
      if (cell.content.kind !== 'formula') continue;
      const { formula } = cell.content;
      const points = formula.references.some(
        (reference) => 'sheet' in reference && reference.sheet === shifted,
      );
      if (points && model.isBroken(formula)) yield cellKey(sheet.id, row, column);
    }
  }
}

/** Cells of lines that came back. */
function* shiftedIn(model: Model, { kind, sheet: id, axis, spans }: LinesEffect) {
  const sheet = model.document.sheet(id);
  if (kind !== 'linesInserted' || !sheet) return;
  const lines = spans.flatMap(({ at, count }) => sheet[axis].ids.slice(at, at + count));
  for (const line of lines) {
    const across = axis === 'rows' ? sheet.columns.ids : sheet.rows.ids;
    for (const other of across) {
      const [row, column] = axis === 'rows' ? [line, other] : [other, line];
      if (sheet.cell(row, column)) yield [row, column] as const;
    }
  }
}

function recalculate(
  model: Model,
  runs: readonly LinesEffect[],
  touched: ReadonlyMap<CellKey, Touched>,
  reread: Reread | 'all',
  readers: readonly CellKey[],
): readonly CellPlace[] {
  const changed = together(model, () => {
    for (const run of runs) shiftLines(model, run);
    for (const { sheet, row, column } of touched.values()) model.put(sheet, row, column);
  });
  const others = reread === 'all' ? [] : reread.others;
  const keys = reread === 'all' ? [...model.told.keys()] : keysOf(model, others);
  const again = keys.length > 0 ? together(model, () => retell(model, keys)) : [];
  const anew =
    readers.length > 0 ? together(model, () => readers.forEach((key) => redo(model, key))) : [];
  const cells = [...changed, ...again, ...anew].flatMap((cell): CellPlace[] =>
    'address' in cell
      ? [{ sheet: model.sheetId(cell.sheet), row: cell.row, column: cell.col }]
      : [],
  );
  return withOthers(cells, others);
}

function keysOf({ document }: Model, spots: readonly CellPlace[]): readonly CellKey[] {
  return spots.flatMap((spot) => {
    const place = placeAt(document, spot);
    return place ? [cellKey(place.sheet, place.row, place.column)] : [];
  });
}

/** A cell that measures something else is shown otherwise, though its value be the same. */
function withOthers(
  cells: readonly CellPlace[],
  others: readonly CellPlace[],
): readonly CellPlace[] {
  if (others.length === 0) return cells;
  const keyOf = ({ sheet, row, column }: CellPlace) => `${sheet} ${row} ${column}`;
  const told = new Set(cells.map(keyOf));
  return [...cells, ...others.filter((spot) => !told.has(keyOf(spot)))];
}

/** Calculates once after all of it. HyperFormula’s `batch` looks through what it holds at each step. */
function together(model: Model, work: () => void) {
  model.calculator.suspendEvaluation();
  work();
  return model.calculator.resumeEvaluation();
}

function shiftLines(model: Model, { kind, sheet, axis, spans }: LinesEffect): void {
  const number = model.number(sheet);
  if (number === undefined) return;
  const { calculator } = model;
  const runs = spans.map(({ at, count }): [number, number] => [at, count]);
  if (kind === 'linesRemoved') {
    if (axis === 'rows') calculator.removeRows(number, ...runs);
    else calculator.removeColumns(number, ...runs);
    return;
  }
  // One run after the other, from the top: each then lands where it is to stand.
  for (const run of runs) {
    if (axis === 'rows') calculator.addRows(number, run);
    else calculator.addColumns(number, run);
  }
}

/** Works a cell out once more, though it holds the same as before. */
function redo(model: Model, key: CellKey): void {
  const [sheet = '', row = '', column = ''] = key.split(' ');
  const spot = spotOf(model.document, { sheet, row, column });
  const address = spot && model.address(spot);
  if (!address) return;
  // The same formula is no change to HyperFormula: without nothing in between, nobody hears of it.
  model.calculator.setCellContents(address, null);
  model.put(sheet, row, column);
}

/** Functions that take readings of several kinds were told what a cell measures: tell them anew. */
function retell(model: Model, keys: readonly CellKey[]): void {
  for (const key of keys) {
    if (!model.told.has(key)) continue;
    const before = model.told.get(key);
    const [sheet = '', row = '', column = ''] = key.split(' ');
    const spot = spotOf(model.document, { sheet, row, column });
    const address = spot && model.address(spot);
    if (!address) {
      model.told.delete(key);
    } else if (model.quantities.of(spot) !== before) {
      model.told.set(key, model.quantities.of(spot));
      redo(model, key);
    }
  }
}
