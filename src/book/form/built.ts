import { formulaFrom } from '../../formula/bind.ts';
import { faultOfName } from '../../formula/naming.ts';
import { maxStoredLength } from '../../formula/read.ts';
import { Draft } from '../inside/draft.ts';
import type { DraftSheet } from '../inside/sheet.ts';
import { entrySettings } from '../settings.ts';
import { applyStep } from '../steps/apply.ts';
import type { Area, Cell, Document, EntrySettings, Formula, Shelf } from '../types.ts';
import { shelves } from '../types.ts';
import { addressAt } from '../look.ts';
import { cellFromJson } from './cells.ts';
import type { BookJson, SheetJson } from './bookschema.ts';
import { carry } from './photos.ts';
import { Unreadable } from './unreadable.ts';
import { words } from '../../words/words.ts';

/** The book that a checked file describes. Throws `Unreadable` where its parts do not fit together. */
export function built(json: BookJson): Document {
  const draft = new Draft(json.title, json.settings);
  // All sheets first, empty: formulas may refer to any of them.
  for (const sheet of json.sheets) placed(draft, sheet);
  const under = json.typedUnder.map(entrySettings);
  const usual = under[0] ?? entrySettings(json.settings);
  for (const sheet of json.sheets) filled(draft, sheet, under, usual);
  for (const { id, name, formula } of json.names) {
    const reason = draft.named(name)
      ? words.bookFile.twice
      : faultOfName(name, () => false)?.reason;
    if (reason !== undefined || draft.nameWithId(id))
      throw at(words.bookFile.name(name), reason ?? twice);
    draft.putName({ id, name, formula: bound(formula, '', draft, words.bookFile.name(name)) });
  }
  for (const shelf of shelves) {
    const kept = json[shelf];
    if (kept) draft.putShelf(shelf, shelfFrom(kept, shelf));
  }
  carry(draft, json.photos ?? []);
  return draft;
}

const twice = words.bookFile.idTwice;
const at = (where: string, reason: string) => new Unreadable(words.bookFile.at(where, reason));

function placed(draft: Draft, sheet: SheetJson): void {
  const empty = { cells: [], areas: [], rowProperties: [], columnProperties: [] };
  const content = { ...sheet, ...empty };
  const result = applyStep(draft, { kind: 'addSheet', content, at: draft.sheets.length });
  if (!result.ok) throw at(words.bookFile.sheet(sheet.properties.name), result.reason);
}

function filled(
  draft: Draft,
  json: SheetJson,
  under: readonly EntrySettings[],
  usual: EntrySettings,
): void {
  const sheet = draft.sheet(json.id);
  if (!sheet) return;
  const where = words.bookFile.sheet(json.properties.name);
  for (const axis of ['rows', 'columns'] as const) {
    for (const { id, ...properties } of json[
      axis === 'rows' ? 'rowProperties' : 'columnProperties'
    ]) {
      if (sheet.lines(axis).indexOf(id) < 0) throw at(where, words.bookFile.noLine(id));
      sheet.lines(axis).setProperties(id, properties);
    }
  }
  sheet.areas = json.areas.map((area) => areaFrom(draft, sheet, area, where));
  const reader = {
    formula: (text: string) => textBound(text, json.id, draft),
    under: (index: number | undefined) => (index === undefined ? usual : under[index]),
  };
  for (const { at: place, ...rest } of json.cells) {
    const [row = '', column = ''] = place.split(' ');
    const spot = { row: sheet.rows.indexOf(row), column: sheet.columns.indexOf(column) };
    if (spot.row < 0 || spot.column < 0) throw at(where, words.bookFile.noPlace(place));
    const cell = cellFromJson(rest, reader);
    const reason =
      'reason' in cell ? cell.reason : faultOfPlaced(sheet.cell(row, column), rest, under);
    if (reason !== undefined) throw at(`${where}, ${addressAt(spot)}`, reason);
    if (!('reason' in cell)) sheet.put(row, column, cell);
  }
}

function faultOfPlaced(
  before: Cell | undefined,
  json: { readonly under?: number },
  under: readonly EntrySettings[],
): string | undefined {
  if (before) return words.bookFile.twice;
  return json.under !== undefined && !under[json.under]
    ? words.bookFile.settingsMissing
    : undefined;
}

function areaFrom(
  draft: Draft,
  sheet: DraftSheet,
  { id, range, quantity }: SheetJson['areas'][number],
  where: string,
): Area {
  const [reference] = bound(`=${range}`, sheet.id, draft, where).references;
  if (reference?.kind !== 'range' || reference.sheet !== sheet.id)
    throw at(where, words.bookFile.noRange(range));
  return { id, range: { ...reference, explicit: false }, quantity };
}

function bound(text: string, own: string, draft: Draft, where: string): Formula {
  const formula = textBound(text, own, draft);
  if ('reason' in formula) throw at(where, formula.reason);
  return formula;
}

function textBound(text: string, own: string, draft: Draft) {
  if (!text.startsWith('=')) return { reason: words.bookFile.noFormula(text) };
  const formula = formulaFrom(text, own, draft, maxStoredLength);
  if ('reason' in formula) return formula;
  // What is lost is written #REF!: an address that leads nowhere was not written by us.
  return formula.references.some(({ kind }) => kind === 'lost')
    ? { reason: words.bookFile.beyondSheet }
    : formula;
}

function shelfFrom(json: BookJson['figures'], name: string): Shelf {
  const items = json.items.map((item) => ({ ...item, id: String(item['id']) }));
  if (new Set(items.map(({ id }) => id)).size < items.length)
    throw at(words.bookFile.inShelf(name), twice);
  return { version: json.version, items: items.toSorted((a, b) => (a.id < b.id ? -1 : 1)) };
}
