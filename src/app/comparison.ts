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
  if (areAlike(found)) return 'Nothing changed';
  const said = [
    ...found.sheets.map((sheet) => inShort(sheet, old.document, now.document)),
    ...(found.title ? ['title'] : []),
    ...(found.settings.length > 0 ? ['settings'] : []),
    ...(found.names.length > 0 ? [counted(found.names.length, 'name')] : []),
    ...(found.order ? ['order of the sheets'] : []),
    ...found.shelves.map(({ shelf }) => shelf),
  ];
  const shown = said.slice(0, 3).join(', ');
  return said.length > 3 ? `${shown} and ${String(said.length - 3)} more` : shown;
}

function inShort(sheet: SheetDifference, before: Document, after: Document): string {
  const title = titleOf(sheet, before, after);
  if (sheet.kind !== 'changed') return `${title} ${sheet.kind === 'added' ? 'added' : 'deleted'}`;
  if (sheet.cells.length > 0) return `${counted(sheet.cells.length, 'cell')} in ${title}`;
  return title;
}

function bookChanges(found: Differences, before: Document, after: Document): Changed[] {
  const title = { what: 'Title', before: before.title, after: after.title };
  return [
    ...(found.title ? [title] : []),
    ...found.settings.map((key) => ({
      what: settingNames[key],
      before: valueText(before.settings[key]),
      after: valueText(after.settings[key]),
    })),
    ...found.names.map((id) => nameChanged(id, before, after)),
    ...(found.order
      ? [{ what: 'Order of the sheets', before: sheetList(before), after: sheetList(after) }]
      : []),
    ...found.shelves.map(({ shelf, items }) => ({
      what: shelfNames[shelf],
      before: String(before.shelf(shelf).items.length),
      after: `${String(after.shelf(shelf).items.length)}, ${String(items)} changed`,
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
    what: `Name ${now?.name ?? old?.name ?? ''}`,
    before: old ? (renamed ? `${old.name} ${old.means}` : old.means) : '',
    after: now?.means ?? '',
  };
}

function sheetChanged(found: SheetDifference, before: Document, after: Document): SheetChanged {
  const title = titleOf(found, before, after);
  if (found.kind !== 'changed')
    return { title, notes: [found.kind === 'added' ? 'added' : 'deleted'], cells: [], more: 0 };
  const properties = found.properties.map((key) => {
    const [old, now] = [before, after].map((document) =>
      valueText(document.sheet(found.sheet)?.properties[key] ?? null),
    );
    return `${propertyNames[key]}: ${old || 'none'} → ${now || 'none'}`;
  });
  const cells = found.cells.slice(0, listed);
  return {
    title,
    notes: [
      ...properties,
      ...linesNotes(found.rows, 'row'),
      ...linesNotes(found.columns, 'column'),
      ...(found.areas ? ['what parts of it measure'] : []),
    ],
    cells: cells.map((cell) => cellChanged(found.sheet, cell, before, after)),
    more: found.cells.length - cells.length,
  };
}

function titleOf({ sheet }: SheetDifference, before: Document, after: Document): string {
  const properties = (after.sheet(sheet) ?? before.sheet(sheet))?.properties;
  return properties?.title || properties?.name || '';
}

function linesNotes({ added, removed, reordered, changed }: LinesDifference, one: string) {
  return [
    ...(added > 0 ? [`${counted(added, one)} added`] : []),
    ...(removed > 0 ? [`${counted(removed, one)} deleted`] : []),
    ...(reordered ? [`${one}s in another order`] : []),
    ...(changed > 0 ? [`${counted(changed, one)} of another size or format`] : []),
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
      ...(gone ? ['its line is deleted'] : []),
      ...aspects.flatMap((aspect) => (gone ? [] : (aspectNotes[aspect] ?? []))),
    ],
  };
}

const aspectNotes: Readonly<Partial<Record<Aspect, string>>> = {
  quantity: 'what it measures',
  role: 'its role',
  format: 'its format',
  note: 'its note',
  target: 'its target',
  tolerance: 'its tolerance',
  receptor: 'its receptor',
  pointed: 'where the meter was pointed',
  photos: 'its photos',
};

const shelfNames = {
  figures: 'Figures',
  fixtures: 'Fixtures',
  spectra: 'Spectra',
  records: 'Records',
} as const;

const propertyNames: Readonly<Record<keyof SheetProperties, string>> = {
  name: 'name',
  title: 'title',
  purpose: 'purpose',
  phase: 'phase',
  template: 'template',
  tolerance: 'tolerance',
  frozenRows: 'rows kept in view',
  frozenColumns: 'columns kept in view',
};

const settingNames: Readonly<Record<keyof Settings, string>> = {
  decimal: 'Decimal sign',
  illuminance: 'Illuminance in',
  length: 'Distances in',
  shutter: 'Shutter as',
  fNumber: 'f-numbers in',
  clock: 'Clock',
  receptor: 'Receptor of readings that do not say',
  domeConstant: 'Constant of the dome',
  flatConstant: 'Constant of the flat receptor',
  reflectedConstant: 'Constant of the spot meter',
  mainsHertz: 'Mains frequency',
  mainsVolts: 'Mains voltage',
  continuousShare: 'Share of a breaker',
  currency: 'Currency',
  tolerance: 'Tolerance of the book',
  zone: 'Time zone',
  page: 'Paper',
  more: 'Other settings',
};

function valueText(value: unknown): string {
  if (value === null || value === undefined) return '';
  if (typeof value === 'number') return String(Math.round(value * 1_000) / 1_000);
  return typeof value === 'object' ? JSON.stringify(value) : String(value as string | boolean);
}

const counted = (count: number, one: string) => `${String(count)} ${count === 1 ? one : `${one}s`}`;
