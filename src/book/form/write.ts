import { settled } from '../../formula/adjust.ts';
import { writeFormula, writeReference } from '../../formula/write.ts';
import { figureFrom, figureItem, rewriteFigure } from '../figures.ts';
import type { Draft } from '../inside/draft.ts';
import { draftOf } from '../inside/opened.ts';
import type { DraftSheet } from '../inside/sheet.ts';
import { lineProperties } from '../inside/sheet.ts';
import { entrySettings } from '../settings.ts';
import type {
  Document,
  EntrySettings,
  Json,
  LineProperties,
  Settings,
  SheetProperties,
  ShelfItem,
  ShelfName,
} from '../types.ts';
import { shelves } from '../types.ts';
import { cellToJson, formatInOrder } from './cells.ts';
import { inKeyOrder } from './openjson.ts';
import { photosOn, type PhotoFile } from './photos.ts';
import { form, version } from './version.ts';

/**
 * A book as the text of its file. The same book is the same text, whatever way it came about: keys
 * and ids stand in one order, and nothing of deleted lines or of the history is in it. Pictures go along
 * only where they are handed over, and of those the ones that are on a cell.
 */
export function writeBook(document: Document, pictures: readonly PhotoFile[] = []): string {
  const draft = draftOf(document);
  const photos = picturesFor(document, pictures);
  const under = new UnderList(entrySettings(document.settings));
  const sheets = draft.sheets.map((sheet) => writeSheet(draft, sheet, under));
  // Books that have no exercises stay as they were written before there were any.
  const written = shelves.filter(
    (shelf) => shelf !== 'exercises' || draft.shelf(shelf).items.length > 0,
  );
  const lines = [
    '{',
    line('form', form),
    line('version', version),
    line('title', document.title),
    line('settings', settingsInOrder(document.settings)),
    line('typedUnder', under.list),
    ` "sheets": [\n${sheets.join(',\n')}\n ],`,
    ` "names": ${block(
      draft.names.map((name) => nameJson(draft, name)),
      ' ',
    )},`,
    ...written.map((shelf, i) => {
      const { version: own, items } = draft.shelf(shelf);
      const end = i < written.length - 1 || photos.length > 0 ? ',' : '';
      return ` ${JSON.stringify(shelf)}: {"version": ${String(own)}, "items": ${block(
        items.map((item) => inKeyOrder(shelved(draft, shelf, item))),
        ' ',
      )}}${end}`;
    }),
    ...(photos.length > 0 ? [` "photos": ${block(photos, ' ')}`] : []),
    '}\n',
  ];
  return lines.join('\n');
}

/** Nothing of deleted lines is in a file: a figure names the living ones that it is drawn from. */
function shelved(draft: Draft, shelf: ShelfName, item: ShelfItem): ShelfItem {
  const figure = shelf === 'figures' ? figureFrom(item) : undefined;
  const written = figure && rewriteFigure(figure, (range) => settled(range, draft));
  return written && written !== figure ? figureItem(written) : item;
}

/** Those that are on a cell, each once, by hash. */
function picturesFor(document: Document, pictures: readonly PhotoFile[]): readonly PhotoFile[] {
  if (pictures.length === 0) return [];
  const byHash = new Map(pictures.map((picture) => [picture.hash, picture.jpeg]));
  return photosOn(document).flatMap((hash) => {
    const jpeg = byHash.get(hash);
    return jpeg === undefined ? [] : [{ hash, jpeg }];
  });
}

/** The settings that entries were typed under, each once, in the order they are met. */
class UnderList {
  readonly #usual: EntrySettings;
  readonly #indices = new Map<EntrySettings, number>();

  constructor(usual: EntrySettings) {
    this.#usual = usual;
  }

  /** `undefined` for the first: it need not be said. */
  indexOf(under: EntrySettings | undefined): number | undefined {
    const settings = under ? entrySettings(under) : this.#usual;
    const index = this.#indices.get(settings) ?? this.#indices.size;
    this.#indices.set(settings, index);
    return index === 0 ? undefined : index;
  }

  get list(): readonly EntrySettings[] {
    return [...this.#indices.keys()];
  }
}

function writeSheet(draft: Draft, sheet: DraftSheet, under: UnderList): string {
  const writer = {
    formula: (formula: Parameters<typeof writeFormula>[0]) =>
      writeFormula(formula, sheet.id, draft),
    under: (settings: EntrySettings | undefined) => under.indexOf(settings),
  };
  const cells: string[] = [];
  for (const row of sheet.rows.ids)
    for (const column of sheet.columns.ids) {
      const cell = sheet.cell(row, column);
      if (cell) cells.push(JSON.stringify({ at: `${row} ${column}`, ...cellToJson(cell, writer) }));
    }
  const { name, title, purpose, phase, template, tolerance, frozenRows, frozenColumns, filter } =
    sheet.properties;
  const properties: Partial<SheetProperties> = {
    name,
    title,
    purpose,
    phase,
    template,
    tolerance,
    frozenRows,
    frozenColumns,
    ...(filter && { filter: { head: filter.head, column: filter.column, hides: filter.hides } }),
  };
  return [
    '  {',
    `   "id": ${JSON.stringify(sheet.id)},`,
    `   "properties": ${JSON.stringify(properties)},`,
    `   "rows": ${JSON.stringify(sheet.rows.ids)},`,
    `   "columns": ${JSON.stringify(sheet.columns.ids)},`,
    `   "rowProperties": ${block(linesJson(sheet, 'rows'), '   ')},`,
    `   "columnProperties": ${block(linesJson(sheet, 'columns'), '   ')},`,
    `   "areas": ${block(areasJson(draft, sheet), '   ')},`,
    `   "cells": ${cells.length > 0 ? `[\n    ${cells.join(',\n    ')}\n   ]` : '[]'}`,
    '  }',
  ].join('\n');
}

function linesJson(sheet: DraftSheet, axis: 'rows' | 'columns') {
  return lineProperties(sheet.lines(axis)).map(({ id, properties }) => ({
    id,
    ...lineInOrder(properties),
  }));
}

export function lineInOrder({ size, quantity, role, format }: LineProperties): LineProperties {
  return {
    ...(size !== undefined && { size }),
    ...(quantity !== undefined && { quantity }),
    ...(role !== undefined && { role }),
    ...(format !== undefined && { format: formatInOrder(format) }),
  };
}

/** An area whose lines are all gone is gone. */
function areasJson(draft: Draft, sheet: DraftSheet) {
  return sheet.areas.flatMap(({ id, range, quantity }) => {
    const text = writeReference({ ...range, explicit: false }, sheet.id, draft);
    return text.startsWith('#') ? [] : [{ id, range: text, quantity }];
  });
}

function nameJson(draft: Draft, { id, name, formula }: Document['names'][number]) {
  return { id, name, formula: writeFormula(formula, null, draft) };
}

/** A 24-hour clock goes without saying, so that books without another stay as they were written. */
function settingsInOrder(settings: Settings): Omit<Settings, 'clock'> & Partial<Settings> {
  const { decimal, illuminance, length, shutter, fNumber, clock, receptor } = settings;
  const { domeConstant, flatConstant, reflectedConstant, mainsHertz, mainsVolts } = settings;
  const { continuousShare, currency, tolerance, zone, page, more } = settings;
  return {
    ...{ decimal, illuminance, length, shutter, fNumber },
    ...(clock !== '24' && { clock }),
    receptor,
    ...{ domeConstant, flatConstant, reflectedConstant, mainsHertz, mainsVolts },
    ...{ continuousShare, currency, tolerance, zone, page },
    more: inKeyOrder(more) as Settings['more'],
  };
}

const line = (key: string, value: unknown) => ` ${JSON.stringify(key)}: ${JSON.stringify(value)},`;

/** A list with one item a line. */
function block(items: readonly (Json | object)[], indent: string): string {
  if (items.length === 0) return '[]';
  const lines = items.map((item) => `${indent} ${JSON.stringify(item)}`);
  return `[\n${lines.join(',\n')}\n${indent}]`;
}
