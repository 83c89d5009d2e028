import { writeBook } from '../book/form/write.ts';
import type { Document, Means, Settings } from '../book/types.ts';
import type { Outcome } from '../commands/command.ts';
import { taking } from '../files/in/build.ts';
import { newBookFrom } from '../files/in/newBook.ts';
import { most } from '../files/in/refused.ts';
import { typeOf, type OutForm } from '../files/out/forms.ts';
import { exportDialog, type ExportState } from '../panels/files/export.ts';
import { importDialog, type ImportState } from '../panels/files/import.ts';
import { signal } from '../panels/kit/signals.ts';
import type { Action } from './actions.ts';
import type { Desk } from './desk.ts';
import { exchange, type Exchanging } from './exchange.ts';
import { askForFile, saveFile } from './file-dialog.ts';
import { words } from '../words/words.ts';

export interface ExchangeHands {
  readonly means: Means;
  /** What a new book here is set to. */
  readonly settings: Partial<Settings>;
  desk(): Desk | null;
  begin(document: Document): Promise<Outcome>;
  tell(outcome: Outcome): void;
}

const ok: Outcome = { ok: true };
export const others = '.xlsx,.ods,.csv,.tsv,.txt';

/** Files in and out in the forms of other spreadsheet programs. */
export function exchangeActions(hands: ExchangeHands): readonly Action[] {
  return [
    {
      id: 'book.import',
      name: words.app.import,
      group: 'book',
      search: ['xlsx', 'ods', 'csv', 'tsv', 'spreadsheet', 'take in', 'other programs'],
      async run() {
        const file = await askForFile(others);
        return file ? importFile(hands, file) : ok;
      },
    },
    {
      id: 'book.export',
      name: words.app.export,
      group: 'book',
      search: ['xlsx', 'ods', 'csv', 'tsv', 'spreadsheet', 'download', 'other programs'],
      unavailable: () => (hands.desk() ? undefined : words.app.openFirst),
      run: () => exportBook(hands),
    },
  ];
}

/** A file of another program: looked at first, then taken in. */
export function importFile(hands: ExchangeHands, file: File): Outcome {
  if (file.size > most.packed) return { ok: false, reason: words.files.largerThan50 };
  const state = signal<ImportState>({ kind: 'reading' });
  let work: Exchanging<unknown> | undefined;
  const read = async (decimal?: '.' | ',') => {
    work?.cancel();
    state.value = { kind: 'reading' };
    const reading = exchange({ kind: 'read', file, ...(decimal && { decimal }) }, () => undefined);
    work = reading;
    const result = await reading.result;
    if (work !== reading) return;
    state.value =
      'imported' in result
        ? { kind: 'ready', imported: result.imported }
        : { kind: 'refused', reason: result.reason };
  };
  importDialog({
    name: file.name,
    state,
    open: hands.desk() !== null,
    readAgain: (decimal) => void read(decimal),
    cancel: () => work?.cancel(),
    take(into, choices) {
      if (state.value.kind !== 'ready') return words.exchange.stillReading;
      const { imported } = state.value;
      const desk = into === 'here' ? hands.desk() : null;
      if (desk) {
        const { book } = desk;
        const at = book.document.sheets.length;
        const building = { book: imported.book, guessed: imported.guessed, choices };
        const ran = book.run(
          taking(book.document, hands.means, building, words.exchange.importOf(file.name)),
        );
        if (!ran.ok) return ran.reason;
        desk.session.show(book.document.sheets[at]?.id ?? desk.session.state.sheet);
        return undefined;
      }
      const made = newBookFrom(imported, hands.means, { choices, settings: hands.settings });
      if (!made.ok) return made.reason;
      void hands.begin(made.document).then(hands.tell);
      return undefined;
    },
  });
  void read();
  return ok;
}

function exportBook(hands: ExchangeHands): Outcome {
  const desk = hands.desk();
  if (!desk) return { ok: false, reason: words.app.openFirst };
  const { document } = desk.book;
  const inView = document.sheet(desk.session.state.sheet) ?? document.sheets[0];
  const sheet = inView?.properties.name ?? '';
  const state = signal<ExportState>({ kind: 'asking' });
  let work: Exchanging<unknown> | undefined;
  const write = async (form: OutForm, formulas: 'live' | 'values') => {
    state.value = { kind: 'writing', share: 0 };
    const writing = exchange(
      { kind: 'write', book: writeBook(document), form, formulas },
      (share) => (state.value = { kind: 'writing', share }),
    );
    work = writing;
    const result = await writing.result;
    if (!('files' in result)) {
      state.value = { kind: 'asking', refused: result.reason };
      return;
    }
    const file = result.files.find((one) => one.sheet === undefined || one.sheet === sheet);
    if (file) {
      const title = file.sheet === undefined ? document.title : `${document.title}, ${file.sheet}`;
      saveFile(title, form, typeOf[form], file.content);
    }
    state.value = { kind: 'done' };
    hands.tell({ ok: true, say: words.exchange.exported(document.title, form) });
  };
  exportDialog({
    title: document.title,
    sheet,
    state,
    write: (form, formulas) => void write(form, formulas),
    cancel: () => work?.cancel(),
  });
  return ok;
}
