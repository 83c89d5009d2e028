import * as v from 'valibot';
import {
  entrySettings,
  finite,
  held,
  id,
  lineProperties,
  quantity,
  said,
  settings,
  sheetProperties,
  shelfItem,
  shelfName,
} from './schema.ts';

/** Every key may be missing; none may be there without a value. */
function partial<T extends Record<string, v.GenericSchema>>(entries: T) {
  const optional = Object.entries(entries).map(([key, entry]) => [key, v.exactOptional(entry)]);
  return v.strictObject(
    Object.fromEntries(optional) as { [K in keyof T]: v.ExactOptionalSchema<T[K], undefined> },
  );
}

const formula = v.strictObject({ pieces: v.array(v.string()), references: v.array(v.string()) });
const axis = v.picklist(['rows', 'columns']);
const place = v.pipe(v.number(), v.integer());
const ids = v.array(id);
const after = v.array(v.nullable(id));
const block = v.strictObject({ sheet: id, rows: ids, columns: ids });

const cell = v.strictObject({
  ...held,
  formula: v.exactOptional(formula),
  under: v.exactOptional(entrySettings),
  ...said,
  target: v.exactOptional(v.union([finite, formula])),
});
const placed = v.strictObject({ row: id, column: id, cell });
const line = v.strictObject({ id, properties: lineProperties });
const area = v.strictObject({ id, range: v.string(), quantity });

const content = v.strictObject({
  id,
  properties: sheetProperties,
  rows: ids,
  columns: ids,
  rowProperties: v.array(line),
  columnProperties: v.array(line),
  areas: v.array(area),
  cells: v.array(placed),
});

const step = v.variant('kind', [
  v.strictObject({
    kind: v.literal('setCells'),
    sheet: id,
    cells: v.array(v.strictObject({ row: id, column: id, cell: v.nullable(cell) })),
  }),
  v.strictObject({ kind: v.literal('sort'), block, order: v.array(place) }),
  v.strictObject({ kind: v.literal('moveCells'), from: block, to: block }),
  v.strictObject({
    kind: v.literal('insertLines'),
    sheet: id,
    axis,
    ids,
    after: v.nullable(id),
  }),
  v.strictObject({
    kind: v.picklist(['dropLines', 'removeLines', 'reviveLines']),
    sheet: id,
    axis,
    ids,
  }),
  v.strictObject({ kind: v.picklist(['moveLines', 'returnLines']), sheet: id, axis, ids, after }),
  v.strictObject({
    kind: v.literal('setLines'),
    sheet: id,
    axis,
    lines: v.array(v.strictObject({ id, properties: v.nullable(lineProperties) })),
  }),
  v.strictObject({ kind: v.literal('addSheet'), content, at: place }),
  v.strictObject({ kind: v.picklist(['dropSheet', 'removeSheet']), sheet: id }),
  v.strictObject({ kind: v.literal('reviveSheet'), sheet: id, at: place }),
  v.strictObject({ kind: v.literal('moveSheet'), sheet: id, to: place }),
  v.strictObject({
    kind: v.literal('setSheet'),
    sheet: id,
    properties: partial(sheetProperties.entries),
  }),
  v.strictObject({ kind: v.literal('setAreas'), sheet: id, areas: v.array(area) }),
  v.strictObject({
    kind: v.literal('defineName'),
    name: v.strictObject({ id, name: v.string(), formula }),
  }),
  v.strictObject({ kind: v.literal('renameName'), id, name: v.string() }),
  v.strictObject({ kind: v.literal('removeName'), id }),
  v.strictObject({ kind: v.literal('setTitle'), title: v.string() }),
  v.strictObject({ kind: v.literal('setSettings'), settings: partial(settings.entries) }),
  v.strictObject({
    kind: v.literal('setShelf'),
    shelf: shelfName,
    items: v.array(v.strictObject({ id, item: v.nullable(shelfItem) })),
  }),
]);

/** One line of a journal. */
export const lineSchema = v.variant('kind', [
  v.strictObject({
    kind: v.picklist(['do', 'follow']),
    label: v.string(),
    steps: v.array(step),
    go: v.exactOptional(block),
  }),
  v.strictObject({ kind: v.picklist(['undo', 'redo']) }),
]);

export type StepJson = v.InferOutput<typeof step>;
export type LineJson = v.InferOutput<typeof lineSchema>;
export type AreaJson = v.InferOutput<typeof area>;
export type PlacedJson = v.InferOutput<typeof placed>;
