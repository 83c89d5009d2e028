import { mapReferences } from '../../formula/adjust.ts';
import { shapeFrom } from '../../formula/read.ts';
import type { Formula, Reference } from '../../formula/types.ts';
import { contentOf } from '../content.ts';
import { figureFrom, figureItem, rewriteFigure } from '../figures.ts';
import { Draft } from '../inside/draft.ts';
import { DraftSheet } from '../inside/sheet.ts';
import type {
  Cell,
  Document,
  Json,
  Refusal,
  SheetContent,
  SheetProperties,
  ShelfItem,
  ShelfName,
  Step,
} from '../types.ts';
import { shelves } from '../types.ts';
import { readBook } from './read.ts';
import { lineFromText, lineToText } from './stepjson.ts';
import { writeBook } from './write.ts';

/** A book and its journal, as for a report of a fault. */
export interface Report {
  /** The book that the journal begins with, as the text of its file. */
  readonly book: string;
  readonly lines: readonly string[];
}

/**
 * The same report without anyone's words: texts, notes, titles, labels and the texts within formulas
 * are blanked letter by letter, sheets and names are numbered. Numbers and what was done stay, so it
 * still replays. A last line that was cut short is left out.
 */
export function redact({ book, lines }: Report): ({ readonly ok: true } & Report) | Refusal {
  const read = readBook(book);
  if (!read.ok) return read;
  const blinder = new Blinder();
  const document = blinder.document(read.document);
  const blinded: string[] = [];
  for (const [index, text] of lines.entries()) {
    const line = lineFromText(text);
    if ('reason' in line) {
      if (index < lines.length - 1) return { ok: false, reason: line.reason };
    } else if ('transaction' in line) {
      const { kind, transaction } = line;
      const steps = transaction.steps.map((step) => blinder.step(step));
      blinded.push(lineToText({ kind, transaction: { ...transaction, label: 'Change', steps } }));
    } else blinded.push(text);
  }
  return { ok: true, book: writeBook(document), lines: blinded };
}

const blank = (text: string) => text.replace(/[^\s]/gu, 'x');

/** Gives each name met a number, the same wherever the name stands. */
class Numbered {
  readonly #known = new Map<string, string>();
  readonly #stem: string;

  constructor(stem: string) {
    this.#stem = stem;
  }

  of(name: string): string {
    const key = name.toLowerCase();
    const number = this.#known.get(key) ?? `${this.#stem}${String(this.#known.size + 1)}`;
    this.#known.set(key, number);
    return number;
  }
}

class Blinder {
  readonly #sheets = new Numbered('Sheet ');
  readonly #names = new Numbered('name_');

  document(document: Document): Document {
    const draft = new Draft(blank(document.title), {
      ...document.settings,
      more: open(document.settings.more),
    });
    for (const sheet of document.sheets) {
      const content = contentOf(document, sheet.id);
      if (content) draft.placeSheet(new DraftSheet(this.#content(content)), draft.sheets.length);
    }
    for (const { id, name, formula } of document.names)
      draft.putName({ id, name: this.#names.of(name), formula: this.#formula(formula) });
    for (const shelf of shelves) {
      const { version, items } = document.shelf(shelf);
      draft.putShelf(shelf, { version, items: items.map((item) => this.#item(shelf, item)) });
    }
    return draft;
  }

  step(step: Step): Step {
    switch (step.kind) {
      case 'setCells':
        return {
          ...step,
          cells: step.cells.map((at) => ({ ...at, cell: at.cell && this.#cell(at.cell) })),
        };
      case 'addSheet':
        return { ...step, content: this.#content(step.content) };
      case 'setSheet':
        return { ...step, properties: this.#properties(step.properties) };
      case 'defineName': {
        const { id, name, formula } = step.name;
        return {
          ...step,
          name: { id, name: this.#names.of(name), formula: this.#formula(formula) },
        };
      }
      case 'renameName':
        return { ...step, name: this.#names.of(step.name) };
      case 'setTitle':
        return { ...step, title: blank(step.title) };
      case 'setSettings': {
        const { more, ...settings } = step.settings;
        return { ...step, settings: { ...settings, ...(more && { more: open(more) }) } };
      }
      case 'setShelf':
        return {
          ...step,
          items: step.items.map(({ id, item }) => ({
            id,
            item: item && this.#item(step.shelf, item),
          })),
        };
      default:
        return step;
    }
  }

  #content(content: SheetContent): SheetContent {
    return {
      ...content,
      properties: { ...content.properties, ...this.#properties(content.properties) },
      cells: content.cells.map((at) => ({ ...at, cell: this.#cell(at.cell) })),
    };
  }

  /** Of a figure the cells stay: they are how it came about. Of a fixture or a spectrum its kind and its numbers. */
  #item(shelf: ShelfName, item: ShelfItem): ShelfItem {
    const figure = shelf === 'figures' ? figureFrom(item) : undefined;
    if (!figure) {
      const { kind } = item;
      const kept =
        (shelf === 'fixtures' || shelf === 'spectra') && kind !== undefined ? { kind } : {};
      return { ...open(item), ...kept, id: item.id };
    }
    const blinded = rewriteFigure(figure, (range) => this.#reference(range));
    return figureItem({ ...blinded, title: blank(figure.title) });
  }

  #reference(reference: Reference): Reference {
    return reference.kind === 'name'
      ? { kind: 'name', name: this.#names.of(reference.name) }
      : reference;
  }

  #properties(properties: Partial<SheetProperties>): Partial<SheetProperties> {
    const { name, title, purpose, filter } = properties;
    return {
      ...properties,
      ...(name !== undefined && { name: this.#sheets.of(name) }),
      ...(title !== undefined && { title: blank(title) }),
      ...(purpose !== undefined && { purpose: blank(purpose) }),
      ...(filter && { filter: { ...filter, hides: filter.hides.map(blank) } }),
    };
  }

  /** What was typed for a number stays: it is how the number came about. */
  #cell(cell: Cell): Cell {
    const { content, typed, note, pointed, target, taken, photos } = cell;
    return {
      ...cell,
      ...(content.kind === 'text' && {
        content: { kind: 'text', text: blank(content.text) },
        ...(typed !== undefined && { typed: blank(typed) }),
      }),
      ...(content.kind === 'formula' && {
        content: { kind: 'formula', formula: this.#formula(content.formula) },
      }),
      ...(note !== undefined && { note: blank(note) }),
      ...(pointed !== undefined && { pointed: blank(pointed) }),
      ...(taken?.meter !== undefined && { taken: { ...taken, meter: blank(taken.meter) } }),
      ...(photos && { photos: photos.map((photo) => ({ ...photo, name: blank(photo.name) })) }),
      ...(typeof target === 'object' && { target: this.#formula(target) }),
    };
  }

  #formula(formula: Formula): Formula {
    const { references } = mapReferences(formula, (one) => this.#reference(one));
    const pieces = formula.shape.pieces.map((piece) =>
      piece.replace(/"(?:[^"]|"")*"/g, (text) => `"${'x'.repeat(text.length - 2)}"`),
    );
    const shape = shapeFrom(pieces);
    if ('reason' in shape) throw new Error(shape.reason);
    return { shape, references };
  }
}

function open<T extends { readonly [key: string]: Json }>(values: T): { [key: string]: Json } {
  return Object.fromEntries(Object.entries(values).map(([key, value]) => [key, openValue(value)]));
}

function openValue(value: Json): Json {
  if (typeof value === 'string') return blank(value);
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return (value as readonly Json[]).map(openValue);
  return open(value as { readonly [key: string]: Json });
}
