import { formulaToJson } from '../../formula/codec.ts';
import { contentOf } from '../content.ts';
import { inKeyOrder } from '../form/openjson.ts';
import { same, sameCell } from '../form/same.ts';
import { draftOf } from '../inside/opened.ts';
import type { DraftSheet } from '../inside/sheet.ts';
import type { AxisName, CellAt, Document, Id, Json, Settings, Step } from '../types.ts';
import { shelves } from '../types.ts';
import type { Made } from './made.ts';
import { made } from './made.ts';

/**
 * Makes a book the same as another state of it, for instance a version that was kept: one gesture,
 * so that it can be undone. Lines, sheets and names are told by their ids; what is the same already
 * is not touched.
 */
export function become(document: Document, wanted: Document, label: string): Made {
  const now = draftOf(document);
  const aside = setAside(document, wanted);
  const shared = draftOf(wanted).sheets.flatMap((sheet) => {
    const twin = now.sheet(sheet.id) ?? now.goneSheet(sheet.id);
    return twin ? [{ sheet, twin, lines: linesSteps(twin, sheet) }] : [];
  });
  const leaving = now.sheets.filter(({ id }) => !wanted.sheet(id)).map(({ id }) => id);
  // A book keeps at least one sheet: where none stays, the last goes when others are there.
  const late = leaving.length === now.sheets.length ? leaving.slice(-1) : [];
  const early = leaving.slice(0, leaving.length - late.length);
  return made(label, [
    ...wholeSteps(document, wanted),
    ...early.map(removed),
    ...now.sheets.flatMap(({ id }) => (early.includes(id) ? [] : aside(id))),
    // First all that formulas may refer to, then the cells.
    ...wanted.sheets.flatMap(({ id }): Step[] => {
      if (now.sheet(id)) return [];
      if (now.goneSheet(id)) return [{ kind: 'reviveSheet', sheet: id, at: last }, ...aside(id)];
      const content = contentOf(wanted, id);
      return content ? [{ kind: 'addSheet', content, at: last }] : [];
    }),
    ...shared.flatMap(({ lines }) => lines),
    ...shared.flatMap(({ sheet, twin }) => cellSteps(twin, sheet)),
    ...nameSteps(document, wanted),
    ...late.map(removed),
    ...shared.flatMap(({ sheet, twin, lines }): Step[] => [
      // Lines that come and go change how many are frozen.
      ...(alike({ ...twin.properties }, { ...sheet.properties }) &&
      aside(sheet.id).length === 0 &&
      lines.length === 0
        ? []
        : [{ kind: 'setSheet', sheet: sheet.id, properties: sheet.properties } as const]),
      ...(same(twin.areas, sheet.areas)
        ? []
        : [{ kind: 'setAreas', sheet: sheet.id, areas: sheet.areas } as const]),
    ]),
    ...orderSteps(document, wanted),
  ]);
}

/** Keys may stand in any order. */
const alike = (a: unknown, b: unknown): boolean =>
  same(inKeyOrder((a ?? null) as Json), inKeyOrder((b ?? null) as Json));

const last = Number.MAX_SAFE_INTEGER;
const removed = (sheet: Id): Step => ({ kind: 'removeSheet', sheet });

/** Title, settings and what stands beside the sheets. */
function wholeSteps(document: Document, wanted: Document): Step[] {
  const keys = (Object.keys(wanted.settings) as (keyof Settings)[]).filter(
    (key) => !alike(document.settings[key], wanted.settings[key]),
  );
  const settings = Object.fromEntries(keys.map((key) => [key, wanted.settings[key]]));
  return [
    ...(document.title === wanted.title
      ? []
      : [{ kind: 'setTitle', title: wanted.title } as const]),
    ...(keys.length === 0 ? [] : [{ kind: 'setSettings', settings } as const]),
    ...shelves.flatMap((shelf): Step[] => {
      const before = new Map(document.shelf(shelf).items.map((item) => [item.id, item]));
      const after = new Map(wanted.shelf(shelf).items.map((item) => [item.id, item]));
      const items = [...new Set([...before.keys(), ...after.keys()])]
        .filter((id) => !alike(before.get(id), after.get(id)))
        .map((id) => ({ id, item: after.get(id) ?? null }));
      return items.length > 0 ? [{ kind: 'setShelf', shelf, items }] : [];
    }),
  ];
}

/** Sheets get names that nobody has while others take theirs; nothing where all keep their own. */
function setAside(document: Document, wanted: Document): (id: Id) => Step[] {
  const named = ({ sheets }: Document) =>
    sheets.map(({ id, properties }) => [id, properties.name].join()).toSorted();
  if (same(named(document), named(wanted))) return () => [];
  const all = [...draftOf(document).everySheet(), ...wanted.sheets].map(
    ({ properties }) => properties.name,
  );
  let stem = 'aside';
  while (all.some((name) => name.toLowerCase().startsWith(stem))) stem += '-';
  const numbers = new Map<Id, number>();
  return (id) => {
    const number = numbers.get(id) ?? numbers.size;
    numbers.set(id, number);
    const name = `${stem} ${String(number)}`;
    return [{ kind: 'setSheet', sheet: id, properties: { name } }];
  };
}

function linesSteps(twin: DraftSheet, sheet: DraftSheet): Step[] {
  return (['rows', 'columns'] as const).flatMap((axis) => axisSteps(twin, sheet, axis));
}

function axisSteps(twin: DraftSheet, sheet: DraftSheet, axis: AxisName): Step[] {
  const lines = twin.lines(axis);
  const { ids } = sheet.lines(axis);
  const whole = new Set(ids);
  const leaving = lines.ids.filter((id) => !whole.has(id));
  const gone = ids.filter((id) => lines.isGone(id));
  const unknown = ids.filter((id) => !lines.knows(id));
  const back = new Set(gone);
  const order = lines.entries.filter(
    (id) => (lines.indexOf(id) >= 0 && whole.has(id)) || back.has(id),
  );
  const at = { sheet: sheet.id, axis };
  const properties = ids.flatMap((id) => {
    const before = lines.properties(id) ?? null;
    const after = sheet.lines(axis).properties(id) ?? null;
    return alike(before, after) ? [] : [{ id, properties: after }];
  });
  return [
    ...(leaving.length > 0 ? [{ kind: 'removeLines', ...at, ids: leaving } as const] : []),
    ...(gone.length > 0 ? [{ kind: 'reviveLines', ...at, ids: gone } as const] : []),
    ...(unknown.length > 0
      ? [{ kind: 'insertLines', ...at, ids: unknown, after: lines.last } as const]
      : []),
    ...(same([...order, ...unknown], ids)
      ? []
      : [{ kind: 'returnLines', ...at, ids, after: [null, ...ids.slice(0, -1)] } as const]),
    ...(properties.length > 0 ? [{ kind: 'setLines', ...at, lines: properties } as const] : []),
  ];
}

/** Cells that are otherwise, those of lines that come back among them. */
function cellSteps(twin: DraftSheet, sheet: DraftSheet): Step[] {
  const cells: CellAt[] = [];
  for (const { row, column, cell } of sheet.cells())
    if (!sameCell(twin.cell(row, column), cell)) cells.push({ row, column, cell });
  for (const { row, column } of twin.everyCell()) {
    const lives = sheet.rows.indexOf(row) >= 0 && sheet.columns.indexOf(column) >= 0;
    if (lives && !sheet.cell(row, column)) cells.push({ row, column, cell: null });
  }
  return cells.length > 0 ? [{ kind: 'setCells', sheet: sheet.id, cells }] : [];
}

function nameSteps(document: Document, wanted: Document): Step[] {
  const said = ({ names }: Document) =>
    new Map(names.map((name) => [name.id, { ...name, formula: formulaToJson(name.formula) }]));
  const before = said(document);
  const after = said(wanted);
  const stays = (id: Id) => same(before.get(id), after.get(id));
  return [
    ...document.names.flatMap(({ id }): Step[] => (stays(id) ? [] : [{ kind: 'removeName', id }])),
    ...wanted.names.flatMap((name): Step[] =>
      stays(name.id) ? [] : [{ kind: 'defineName', name }],
    ),
  ];
}

/** By now all sheets wanted are there, and no others. */
function orderSteps(document: Document, wanted: Document): Step[] {
  const stayed = document.sheets.filter(({ id }) => wanted.sheet(id)).map(({ id }) => id);
  const came = wanted.sheets.filter(({ id }) => !document.sheet(id)).map(({ id }) => id);
  const order = [...stayed, ...came];
  return wanted.sheets.flatMap(({ id }, to): Step[] => {
    if (order[to] === id) return [];
    order.splice(order.indexOf(id), 1);
    order.splice(to, 0, id);
    return [{ kind: 'moveSheet', sheet: id, to }];
  });
}
