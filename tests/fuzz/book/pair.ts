import { readEntry } from '../../../functions/quantities/entry.ts';
import { createBook } from '../../../src/book/book.ts';
import { journalLine } from '../../../src/book/form/journal.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { typedText } from '../../../src/book/look.ts';
import type { Made } from '../../../src/book/make/made.ts';
import { newDocument } from '../../../src/book/newdocument.ts';
import { writingSettings } from '../../../src/book/settings.ts';
import type { Book, Document, Means, Sheet } from '../../../src/book/types.ts';
import type { MSheet, Model } from './model.ts';
import { living, newModel, textOf } from './model.ts';

/** As many copies of the plain model as are kept for undo. */
const remembered = 60;

/** The book and the plain model side by side, given the same things to do. */
export class Pair {
  readonly means: Means;
  readonly document: Document;
  readonly book: Book;
  readonly journal: string[] = [];
  model: Model = newModel('Walk');
  #done: Model[] = [];
  #undone: Model[] = [];

  constructor() {
    let next = 0;
    this.means = {
      newId: () => `i${(next++).toString(36)}`,
      readEntry: (text, quantity, settings) => readEntry(text, quantity, writingSettings(settings)),
      isFunction: (name) => name.toUpperCase() === 'SUM',
    };
    this.document = newDocument(this.means, { sheet: { name: 'Walk' } });
    this.book = createBook(this.document);
    this.book.listen((change) => this.journal.push(journalLine(change)));
  }

  /** Living sheets of the model, in order: the same as those of the document. */
  get sheets(): MSheet[] {
    return this.model.sheets.filter(({ gone }) => !gone);
  }

  sheet(model: MSheet): Sheet {
    const sheet = this.document.sheets[this.sheets.indexOf(model)];
    if (!sheet) throw new Error(`no sheet ${model.name}`);
    return sheet;
  }

  /** Does it to both, unless the book refuses: then the model is left alone too. */
  both(made: Made, toModel: () => void): void {
    if (!made.ok) return;
    const before = structuredClone(this.model);
    const result = this.book.run(made.transaction);
    if (!result.ok) throw new Error(`${made.transaction.label}: ${result.reason}`);
    toModel();
    if (!result.change) return;
    this.#undone = [];
    this.#done.push(before);
    if (this.#done.length > remembered) this.#done.shift();
  }

  undo(): void {
    const before = this.#done.pop();
    if (!before) return;
    this.#undone.push(this.model);
    this.model = before;
    this.book.undo();
  }

  redo(): void {
    const after = this.#undone.pop();
    if (!after) return;
    this.#done.push(this.model);
    this.model = after;
    this.book.redo();
  }

  /** What differs on one sheet, or on all of them and in the names; empty when nothing does. */
  differences(only?: number): string[] {
    const sheets = this.sheets.map(({ name }) => name).join();
    const ours = this.document.sheets.map(({ properties }) => properties.name).join();
    if (sheets !== ours) return [`sheets: ${ours} against ${sheets}`];
    const found = this.sheets.flatMap((sheet, i) =>
      only === undefined || only === i ? this.#sheetDifferences(sheet) : [],
    );
    return only === undefined ? [...found, ...this.#nameDifferences()] : found;
  }

  #sheetDifferences(model: MSheet): string[] {
    const sheet = this.sheet(model);
    const wanted = new Map<string, string>();
    const [rows, columns] = [living(model.rows), living(model.columns)];
    for (const { row, column, parts } of model.cells)
      if (!row.gone && !column.gone)
        wanted.set(
          `${String(rows.indexOf(row))},${String(columns.indexOf(column))}`,
          textOf(this.model, parts, model),
        );
    const differences: string[] = [];
    for (const { row, column } of sheet.cells()) {
      const at = `${String(sheet.rows.indexOf(row))},${String(sheet.columns.indexOf(column))}`;
      const text = typedText(this.document, { sheet: sheet.id, row, column });
      if (text !== (wanted.get(at) ?? ''))
        differences.push(`${model.name} ${at}: ${text} against ${wanted.get(at) ?? 'nothing'}`);
      wanted.delete(at);
    }
    for (const [at, text] of wanted)
      differences.push(`${model.name} ${at}: nothing against ${text}`);
    return differences;
  }

  #nameDifferences(): string[] {
    const ours = this.document.names.map(({ name, formula }) => {
      const parsed = /"formula":"([^"]*)"/;
      return `${name} ${parsed.exec(this.#nameLine(name))?.[1] ?? String(formula.references.length)}`;
    });
    const theirs = this.model.names
      .map(({ name, parts }) => `${name} ${textOf(this.model, parts, null)}`)
      .toSorted((a, b) => (a.toLowerCase() < b.toLowerCase() ? -1 : 1));
    return ours.join('; ') === theirs.join('; ')
      ? []
      : [`${ours.join('; ')} against ${theirs.join('; ')}`];
  }

  #nameLine(name: string): string {
    return (
      writeBook(this.document)
        .split('\n')
        .find((line) => line.includes(`"name":"${name}","formula"`)) ?? ''
    );
  }
}
