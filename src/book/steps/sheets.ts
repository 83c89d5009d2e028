import { isId } from '../../formula/ids.ts';
import { faultOfSheetName } from '../../formula/naming.ts';
import { limits } from '../inside/draft.ts';
import type { Draft } from '../inside/draft.ts';
import { DraftSheet } from '../inside/sheet.ts';
import type {
  AddSheetStep,
  DropSheetStep,
  Id,
  MoveSheetStep,
  RemoveSheetStep,
  ReviveSheetStep,
  SetAreasStep,
  SetSheetStep,
  SheetContent,
  SheetProperties,
} from '../types.ts';
import type { Doer } from './applied.ts';
import { applied, onSheet, refuse } from './applied.ts';
import { words } from '../../words/words.ts';

export const addSheet: Doer<AddSheetStep> = (draft, { content, at }) => {
  const reason =
    faultOfContent(draft, content) ?? nameTaken(draft, content.properties.name, content.id);
  if (reason !== undefined) return refuse(reason);
  const place = within(at, draft.sheets.length);
  draft.placeSheet(new DraftSheet(content), place);
  return applied([{ kind: 'dropSheet', sheet: content.id }], {
    kind: 'sheetAdded',
    sheet: content.id,
    at: place,
  });
};

export const removeSheet: Doer<RemoveSheetStep> = (draft, step, inTurn) =>
  draft.sheets.length === 1
    ? refuse(words.book.lastSheet)
    : dropSheet(draft, { ...step, kind: 'dropSheet' }, inTurn);

export const dropSheet: Doer<DropSheetStep> = (draft, { sheet: id }) =>
  onSheet(draft, id, (sheet) => {
    const at = draft.sheets.indexOf(sheet);
    draft.takeSheet(sheet);
    return applied([{ kind: 'reviveSheet', sheet: id, at }], {
      kind: 'sheetRemoved',
      sheet: id,
      at,
    });
  });

export const reviveSheet: Doer<ReviveSheetStep> = (draft, { sheet: id, at }) => {
  const sheet = draft.goneSheet(id);
  if (!sheet) return refuse(words.book.sheetNotDeleted);
  const reason = nameTaken(draft, sheet.properties.name, id);
  if (reason !== undefined) return refuse(reason);
  const place = within(at, draft.sheets.length);
  draft.placeSheet(sheet, place);
  return applied([{ kind: 'removeSheet', sheet: id }], {
    kind: 'sheetAdded',
    sheet: id,
    at: place,
  });
};

export const moveSheet: Doer<MoveSheetStep> = (draft, { sheet: id, to }) =>
  onSheet(draft, id, (sheet) => {
    const from = draft.sheets.indexOf(sheet);
    const place = within(to, draft.sheets.length - 1);
    draft.moveSheet(sheet, place);
    return applied([{ kind: 'moveSheet', sheet: id, to: from }], {
      kind: 'sheetMoved',
      sheet: id,
      from,
      to: place,
    });
  });

export const setSheet: Doer<SetSheetStep> = (draft, { sheet: id, properties }) =>
  onSheet(draft, id, (sheet) => {
    const { name } = properties;
    const reason = name === undefined ? undefined : nameTaken(draft, name, id);
    if (reason !== undefined) return refuse(reason);
    const before = sheet.properties;
    sheet.properties = { ...before, ...properties };
    const renamed = sheet.properties.name !== before.name;
    if (renamed) draft.sheetRenamed();
    const keys = Object.keys(properties) as (keyof SheetProperties)[];
    const old = Object.fromEntries(keys.map((key) => [key, before[key]]));
    return applied([{ kind: 'setSheet', sheet: id, properties: old }], {
      kind: 'sheetProperties',
      sheet: id,
      renamed,
    });
  });

export const setAreas: Doer<SetAreasStep> = (draft, { sheet: id, areas }) =>
  onSheet(draft, id, (sheet) => {
    if (areas.some(({ range }) => range.sheet !== id)) return refuse(words.book.areaElsewhere);
    const before = sheet.areas;
    sheet.areas = areas;
    return applied([{ kind: 'setAreas', sheet: id, areas: before }], { kind: 'areas', sheet: id });
  });

function nameTaken(draft: Draft, name: string, id: Id): string | undefined {
  const other = draft.sheetNamed(name);
  if (other && other.id !== id) return words.book.sheetThere(other.properties.name);
  return faultOfSheetName(name)?.reason;
}

/** A sheet made elsewhere is taken as it is, so it is looked over first. */
export function faultOfContent(draft: Draft, content: SheetContent): string | undefined {
  if (!isId(content.id) || draft.sheet(content.id)) return words.book.sheetInBook;
  for (const axis of ['rows', 'columns'] as const) {
    const ids = content[axis];
    if (ids.length > limits[axis]) return words.book.tooLarge(axis, limits[axis], ids.length);
    if (new Set(ids).size < ids.length || !ids.every(isId)) return words.book.twoOfOneId(axis);
  }
  const rows = new Set(content.rows);
  const columns = new Set(content.columns);
  const stray =
    content.cells.some(({ row, column }) => !rows.has(row) || !columns.has(column)) ||
    content.rowProperties.some(({ id }) => !rows.has(id)) ||
    content.columnProperties.some(({ id }) => !columns.has(id)) ||
    content.areas.some(({ range }) => range.sheet !== content.id);
  return stray ? words.book.strayInSheet : undefined;
}

const within = (at: number, most: number) => Math.max(0, Math.min(most, Math.trunc(at)));
