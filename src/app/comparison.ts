import { rowCaption } from '../check/captions.ts';
import {
  areAlike,
  differencesOf,
  type Aspect,
  type CellDifference,
  type Differences,
  type LinesDifference,
  type SheetDifference,
} from '../book/differences.ts';
import { readBook } from '../book/form/read.ts';
import { addressOf, formulaText, typedText } from '../book/look.ts';
import type { Document, Settings, SheetProperties } from '../book/types.ts';
import type { CellChanged, Changed, ComparisonView, SheetChanged } from '../panels/kept/view.ts';
import { words } from '../words/words.ts';

/** As many changed cells of a sheet as anyone reads; the rest is counted. */
const listed = 300;

/** Two files of a book, the later against the earlier, in words and cells. */
export function compare(
  before: string,
  after: string,
): Pick<ComparisonView, 'book' | 'sheets'> | { readonly reason: string } {
  const [old, now] = [readBook(before), readBook(after)];
  if (!old.ok) return old;
  if (!now.ok) return now;
  const found = differencesOf(old.document, now.document);
  return {
    book: bookChanges(found, old.document, now.document),
    sheets: found.sheets.map((sheet) => sheetChanged(sheet, old.document, now.document)),
  };
}

/** The same in one line: "12 cells in Sail loft, Boat shed added". */
export function changesInShort(before: string | undefined, after: string): string {
  if (before === undefined) return '';
  const [old, now] = [readBook(before), readBook(after)];
  if (!old.ok || !now.ok) return '';
  const found = differencesOf(old.document, now.document);
  if (areAlike(found)) return words.comparison.nothing;
  const said = [
    ...found.sheets.map((sheet) => inShort(sheet, old.document, now.document)),
    ...(found.title ? [words.comparison.inTitle] : []),
    ...(found.settings.length > 0 ? [words.comparison.inSettings] : []),
    ...(found.names.length > 0 ? [words.comparison.inNames(found.names.length)] : []),
    ...(found.order ? [words.comparison.sheetOrder] : []),
    ...found.shelves.map(({ shelf }) => shelfNames[shelf].toLowerCase()),
  ];
  const shown = said.slice(0, 3).join(', ');
  return said.length > 3 ? words.comparison.andMore(shown, said.length - 3) : shown;
}

function inShort(sheet: SheetDifference, before: Document, after: Document): string {
  const title = titleOf(sheet, before, after);
  if (sheet.kind === 'added') return words.comparison.sheetAdded(title);
  if (sheet.kind !== 'changed') return words.comparison.sheetDeleted(title);
  if (sheet.cells.length > 0) return words.comparison.cellsIn(sheet.cells.length, title);
  return title;
}

function bookChanges(found: Differences, before: Document, after: Document): Changed[] {
  const title = { what: words.comparison.title, before: before.title, after: after.title };
  return [
    ...(found.title ? [title] : []),
    ...found.settings.map((key) => ({
      what: settingNames[key],
      before: valueText(before.settings[key]),
      after: valueText(after.settings[key]),
    })),
    ...found.names.map((id) => nameChanged(id, before, after)),
    ...(found.order
      ? [
          {
            what: words.comparison.orderOfSheets,
            before: sheetList(before),
            after: sheetList(after),
          },
        ]
      : []),
    ...found.shelves.map(({ shelf, items }) => ({
      what: shelfNames[shelf],
      before: String(before.shelf(shelf).items.length),
      after: words.comparison.itemsChanged(String(after.shelf(shelf).items.length), String(items)),
    })),
  ];
}

const sheetList = ({ sheets }: Document) =>
  sheets.map(({ properties }) => properties.title || properties.name).join(', ');

function nameChanged(id: string, before: Document, after: Document): Changed {
  const [old, now] = [before, after].map((document) => {
    const name = document.names.find((one) => one.id === id);
    return name && { name: name.name, means: formulaText(document, name.formula, null) };
  });
  const renamed = old && now && old.name !== now.name;
  return {
    what: words.comparison.name(now?.name ?? old?.name ?? ''),
    before: old ? (renamed ? `${old.name} ${old.means}` : old.means) : '',
    after: now?.means ?? '',
  };
}

function sheetChanged(found: SheetDifference, before: Document, after: Document): SheetChanged {
  const title = titleOf(found, before, after);
  if (found.kind !== 'changed')
    return {
      title,
      notes: [found.kind === 'added' ? words.comparison.added : words.comparison.deleted],
      cells: [],
      more: 0,
    };
  const properties = found.properties.map((key) => {
    const [old, now] = [before, after].map((document) =>
      valueText(document.sheet(found.sheet)?.properties[key] ?? null),
    );
    return `${propertyNames[key]}: ${old || words.comparison.none} → ${now || words.comparison.none}`;
  });
  const cells = found.cells.slice(0, listed);
  return {
    title,
    notes: [
      ...properties,
      ...linesNotes(found.rows, 'row'),
      ...linesNotes(found.columns, 'column'),
      ...(found.areas ? [words.comparison.parts] : []),
    ],
    cells: cells.map((cell) => cellChanged(found.sheet, cell, before, after)),
    more: found.cells.length - cells.length,
  };
}

function titleOf({ sheet }: SheetDifference, before: Document, after: Document): string {
  const properties = (after.sheet(sheet) ?? before.sheet(sheet))?.properties;
  return properties?.title || properties?.name || '';
}

function linesNotes(
  { added, removed, reordered, changed }: LinesDifference,
  one: 'row' | 'column',
) {
  return [
    ...(added > 0 ? [words.comparison.linesAdded(one, added)] : []),
    ...(removed > 0 ? [words.comparison.linesDeleted(one, removed)] : []),
    ...(reordered ? [words.comparison.linesReordered(one)] : []),
    ...(changed > 0 ? [words.comparison.linesChanged(one, changed)] : []),
  ];
}

function cellChanged(
  sheet: string,
  { row, column, aspects }: CellDifference,
  before: Document,
  after: Document,
): CellChanged {
  const place = { sheet, row, column };
  const stands = addressOf(after, place) === undefined ? before : after;
  const at = {
    row: stands.sheet(sheet)?.rows.indexOf(row) ?? 0,
    column: stands.sheet(sheet)?.columns.indexOf(column) ?? 0,
  };
  const gone = stands === before;
  return {
    what: rowCaption(stands, sheet, at.row, at.column),
    address: addressOf(stands, place) ?? '',
    before: aspects.includes('content') ? typedText(before, place) : '',
    after: aspects.includes('content') && !gone ? typedText(after, place) : '',
    notes: [
      ...(gone ? [words.comparison.lineDeleted] : []),
      ...aspects.flatMap((aspect) => (gone ? [] : (aspectNotes[aspect] ?? []))),
    ],
  };
}

const aspectNotes: Readonly<Partial<Record<Aspect, string>>> = {
  quantity: words.comparison.measures,
  role: words.comparison.role,
  format: words.comparison.format,
  note: words.comparison.note,
  target: words.comparison.target,
  tolerance: words.comparison.tolerance,
  receptor: words.comparison.receptor,
  pointed: words.comparison.pointed,
  taken: words.comparison.taken,
  photos: words.comparison.photos,
};

const shelfNames = {
  figures: words.comparison.figures,
  fixtures: words.comparison.fixtures,
  spectra: words.comparison.spectra,
  records: words.comparison.records,
  exercises: words.comparison.exercises,
} as const;

const propertyNames: Readonly<Record<keyof SheetProperties, string>> = {
  name: words.comparison.sheetName,
  title: words.comparison.sheetTitle,
  purpose: 'purpose',
  phase: 'phase',
  template: 'template',
  tolerance: 'tolerance',
  frozenRows: words.comparison.frozenRows,
  frozenColumns: words.comparison.frozenColumns,
  filter: words.comparison.rowsInView,
};

const settingNames: Readonly<Record<keyof Settings, string>> = {
  decimal: words.comparison.decimal,
  illuminance: words.comparison.illuminance,
  length: words.comparison.distances,
  shutter: words.comparison.shutter,
  fNumber: words.comparison.fNumbers,
  clock: words.comparison.clock,
  receptor: words.comparison.readingReceptor,
  domeConstant: words.comparison.dome,
  flatConstant: words.comparison.flat,
  reflectedConstant: words.comparison.spot,
  mainsHertz: words.comparison.mainsHertz,
  mainsVolts: words.comparison.mainsVolts,
  continuousShare: words.comparison.breaker,
  currency: words.comparison.currency,
  tolerance: words.comparison.bookTolerance,
  zone: words.comparison.zone,
  page: words.comparison.paper,
  more: words.comparison.other,
};

function valueText(value: unknown): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'number') return String(Math.round(value * 1_000) / 1_000);
  return typeof value === 'object' ? JSON.stringify(value) : String(value as string | boolean);
}
