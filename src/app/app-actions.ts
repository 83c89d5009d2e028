import { addressBook, startFrom } from './address-book.ts';
import { createBook } from '../book/book.ts';
import { newDocument } from '../book/newdocument.ts';
import { copyOf } from '../book/content.ts';
import { fixturesOf } from '../book/fixtures.ts';
import { figuresOn } from '../book/figures.ts';
import { readBook } from '../book/form/read.ts';
import { photosOn } from '../book/form/photos.ts';
import { figuresFor } from '../book/make/figures.ts';
import type { Book, Document } from '../book/types.ts';
import { paste, take } from '../commands/clipboard.ts';
import type { Outcome } from '../commands/command.ts';
import type { Screen, Theme } from '../panels/screen.ts';
import type { Action } from './actions.ts';
import type { Desk } from './desk.ts';
import { figureActions, type FigureHands } from './figure-actions.ts';
import { askForFile } from './file-dialog.ts';
import type { FileDoor } from './file-door.ts';
import { settingsHere } from './place.ts';
import type { PrintJob } from './print.ts';
import type { Shelf } from './shelf.ts';
import type { Versions } from './versions.ts';
import { sample, templateText } from './templates.ts';
import { withOpenBook } from './with-desk.ts';
import { pasteOrTakeIn } from '../walk/commands.ts';
import { words } from '../words/words.ts';

/** What the actions of app reach: everything that is not in the book. */
export interface AppHands extends FigureHands {
  readonly screen: Screen;
  readonly locale: string;
  desk(): Desk | null;
  newId(): string;
  /** Puts a new book on the desk and keeps it. */
  begin(document: Document): Promise<Outcome>;
  readonly ownAddresses: Shelf['ownAddresses'];
  open(id: string): Promise<Outcome>;
  remove(id: string): Promise<Outcome>;
  saveRaw(id: string): Promise<Outcome>;
  readonly versions: Pick<Versions, 'keep'>;
  readonly files: Pick<FileDoor, 'open' | 'save'>;
  leave(): Promise<Outcome>;
  takeOver(): Promise<Outcome>;
  act(id: string, args: unknown): Outcome;
  find(): void;
  print(job: PrintJob): Promise<Outcome>;
  /** Shows the page that hands a set-up over. */
  handOver(): Outcome | Promise<Outcome>;
  /** Opens the readings of the sheet one by one. */
  walk(): Outcome | Promise<Outcome>;
}

const ok: Outcome = { ok: true };

const themes: readonly (readonly [Theme, string])[] = [
  ['system', words.app.themeSystem],
  ['dark', words.app.themeDark],
  ['light', words.app.themeLight],
  ['metering', words.app.themeMetering],
];

/** Actions on whole books, on this screen and on the clipboard, beside the commands of a book. */
export function appActions(hands: AppHands): readonly Action[] {
  const { unavailable: needsBook, withDesk } = withOpenBook(() => hands.desk());
  return [
    ...bookActions(hands, needsBook, withDesk),
    ...figureActions(hands, needsBook),
    ...clipboardActions(needsBook, withDesk),
    {
      id: 'view.find',
      name: words.app.findCommand,
      group: 'view',
      keys: ['Ctrl+K'],
      run: () => (hands.find(), ok),
    },
    {
      id: 'view.functions',
      name: words.app.reference,
      group: 'view',
      keys: ['F1'],
      search: ['help', 'formula', 'equation', 'functions', 'how'],
      run: () => ok,
    },
    {
      id: 'view.keyboard',
      name: words.app.keyboard,
      group: 'view',
      keys: ['Shift+F1'],
      search: ['keys', 'help'],
      run: () => ok,
    },
    {
      id: 'view.remarks',
      name: words.app.remarks,
      group: 'view',
      keys: ['F7'],
      search: ['unit check', 'mistakes', 'marks', 'what does not go together'],
      unavailable: needsBook,
      run: () => ok,
    },
    { id: 'view.about', name: words.app.about, group: 'view', search: ['licence'], run: () => ok },
    {
      id: 'view.contents',
      name: words.app.toggleContents,
      group: 'view',
      run: () => (hands.screen.toggle('contents'), ok),
    },
    {
      id: 'view.slip',
      name: words.app.toggleSlip,
      group: 'view',
      run: () => (hands.screen.toggle('slip'), ok),
    },
    {
      id: 'walk.start',
      name: words.app.walk,
      group: 'book',
      keys: ['F8'],
      search: ['meter', 'point', 'phone', 'one by one'],
      unavailable: needsBook,
      run: () => hands.walk(),
    },
    {
      id: 'view.readingsOnly',
      name: words.app.readingsOnly,
      group: 'view',
      search: ['tab', 'enter', 'next reading', 'skip', 'walk order', 'keys'],
      run() {
        const { readingsOnly } = hands.screen;
        readingsOnly.value = !readingsOnly.value;
        const say = readingsOnly.value ? words.app.readingsOnlyNow : words.app.everyCellNow;
        return { ok: true, say };
      },
    },
    ...themes.map(([theme, name]): Action => ({
      id: `view.theme.${theme}`,
      name,
      group: 'view',
      search: ['theme', 'night', 'colours'],
      run: () => ((hands.screen.theme.value = theme), ok),
    })),
  ];
}

type WithDesk = (
  run: (desk: Desk) => Outcome | Promise<Outcome>,
) => () => Outcome | Promise<Outcome>;

function bookActions(
  hands: AppHands,
  needsBook: () => string | undefined,
  withDesk: WithDesk,
): readonly Action[] {
  const settings = settingsHere(hands.locale);
  const fromTemplate = async (id: string): Promise<Outcome> => {
    const read = await readTemplate(id);
    if (!read.ok) return read;
    // As its planner would set it: paper, mains and units of where they work.
    const book = createBook(read.document);
    book.run({ label: words.app.newBook, steps: [{ kind: 'setSettings', settings }] });
    return id === addressBook ? hands.begin(book.document) : beginFromOwn(book);
  };
  /** With what the planner’s own address book has. */
  const beginFromOwn = async (book: Book): Promise<Outcome> => {
    const own = await hands.ownAddresses();
    const came = own && startFrom(book, own.document, hands);
    const outcome = await hands.begin(book.document);
    const say = came === undefined ? undefined : words.app.fromAddresses(came);
    return outcome.ok && outcome.say === undefined && say !== undefined
      ? { ok: true, say }
      : outcome;
  };
  const templateOf = (args: unknown) => (args as { template: string | null }).template;
  return [
    {
      id: 'book.open',
      name: words.app.openFile,
      group: 'book',
      keys: ['Ctrl+O'],
      search: ['xlsx', 'ods', 'csv', 'spreadsheet'],
      run: () => hands.files.open(),
    },
    {
      id: 'book.takeOver',
      name: words.app.takeOver,
      group: 'book',
      search: ['another tab', 'keep', 'save here'],
      unavailable: needsBook,
      run: () => hands.takeOver(),
    },
    {
      id: 'book.start',
      name: words.app.startPage,
      group: 'book',
      search: ['close', 'home'],
      unavailable: needsBook,
      run: () => hands.leave(),
    },
    {
      id: 'book.new',
      name: words.app.newBook,
      group: 'book',
      async run(args) {
        const template = args === undefined ? null : templateOf(args);
        if (template !== null) return fromTemplate(template);
        return beginFromOwn(
          createBook(newDocument(hands, { title: words.app.untitledBook, settings })),
        );
      },
    },
    {
      id: 'book.addresses',
      name: words.app.addresses,
      group: 'book',
      search: ['own kit', 'fixtures', 'meters', 'cameras', 'kits', 'inventory', 'equipment'],
      async run() {
        const own = await hands.ownAddresses();
        return own ? hands.open(own.id) : fromTemplate(addressBook);
      },
    },
    {
      id: 'book.sample',
      name: words.app.openSample,
      group: 'book',
      search: ['Harbour Hours', 'example'],
      async run() {
        const read = await readTemplate(sample);
        return read.ok ? hands.begin(read.document) : read;
      },
    },
    {
      id: 'walk.open',
      name: words.app.takeInWalk,
      group: 'book',
      search: ['import', 'csv', 'meter', 'readings'],
      unavailable: needsBook,
      async run() {
        const file = await askForFile('.csv,.tsv,.txt,text/csv,text/plain');
        return file ? hands.act('walk.takeIn', { text: await file.text() }) : ok;
      },
    },
    {
      id: 'book.openKept',
      name: words.app.openKept,
      group: 'book',
      run: (args) => hands.open((args as { id: string }).id),
    },
    {
      id: 'book.removeKept',
      name: words.app.removeKept,
      group: 'book',
      run: (args) => hands.remove((args as { id: string }).id),
    },
    {
      id: 'book.saveRaw',
      name: words.app.saveKept,
      group: 'book',
      run: (args) => hands.saveRaw((args as { id: string }).id),
    },
    {
      id: 'book.saveFile',
      name: words.app.saveFile,
      group: 'book',
      keys: ['Ctrl+S'],
      search: ['download', 'export', 'hand over'],
      unavailable: needsBook,
      run: withDesk(async ({ id, book, photos }) => {
        const pictures = await photos.files(photosOn(book.document));
        const saved = await hands.files.save(id, book, pictures);
        // A version of what the file holds; where none can be kept, the file is there.
        if (saved.ok) void hands.versions.keep('saved');
        return saved;
      }),
    },
    {
      id: 'book.print',
      name: words.app.print,
      group: 'book',
      keys: ['Ctrl+P'],
      unavailable: needsBook,
      search: ['paper', 'pdf'],
      run: () => hands.print({ what: 'sheet' }),
    },
    {
      id: 'book.printAll',
      name: words.print.book,
      group: 'book',
      unavailable: needsBook,
      search: ['paper', 'pdf', 'all sheets'],
      run: () => hands.print({ what: 'book' }),
    },
    {
      id: 'book.handOver',
      name: words.print.handover,
      group: 'book',
      unavailable: needsBook,
      search: ['print', 'pdf', 'one page', 'summary', 'crew', 'rebuild', 'comparison'],
      run: () => hands.handOver(),
    },
    {
      id: 'book.printHandOver',
      name: words.print.handover,
      group: 'book',
      unavailable: needsBook,
      run: (args) => hands.print({ what: 'handOver', ...(args as { sheet: string }) }),
    },
    {
      id: 'sheet.add',
      name: words.app.addSheet,
      group: 'sheets',
      search: ['template', 'new sheet'],
      unavailable: needsBook,
      async run(args) {
        const template = args === undefined ? null : templateOf(args);
        if (template === null) return hands.act('sheet.addContent', undefined);
        const read = await readTemplate(template);
        if (!read.ok) return read;
        const first = read.document.sheets[0];
        const content = first && copyOf(read.document, first.id, hands.newId());
        if (!content) return hands.act('sheet.addContent', undefined);
        const own = figuresOn(read.document, first.id);
        const figures = figuresFor(own, hands, first.id, content.id);
        const fixtures = fixturesOf(read.document);
        return hands.act('sheet.addContent', { content, figures, fixtures });
      },
    },
  ];
}

async function readTemplate(id: string): Promise<ReturnType<typeof readBook>> {
  const text = await templateText(id);
  return text === undefined ? { ok: false, reason: words.app.notInVersion } : readBook(text);
}

function clipboardActions(
  needsBook: () => string | undefined,
  withDesk: WithDesk,
): readonly Action[] {
  const write = (how: 'copy' | 'cut') =>
    withDesk(async ({ context }) => {
      await navigator.clipboard.writeText(take(context, how));
      return ok;
    });
  const read = (what: 'all' | 'values') =>
    withDesk(async ({ context }): Promise<Outcome> => {
      try {
        const text = await navigator.clipboard.readText();
        return what === 'all' ? pasteOrTakeIn(context, text) : paste(context, text, what);
      } catch {
        return {
          ok: false,
          reason: words.app.clipboard,
        };
      }
    });
  const action = (id: string, name: string, keys: string, run: Action['run']): Action => ({
    id,
    name,
    group: 'edit',
    keys: [keys],
    native: true,
    unavailable: needsBook,
    run,
  });
  return [
    action('edit.cut', words.app.cut, 'Ctrl+X', write('cut')),
    action('edit.copy', words.app.copy, 'Ctrl+C', write('copy')),
    action('edit.paste', words.app.paste, 'Ctrl+V', read('all')),
    {
      ...action('edit.pasteValues', words.app.pasteValues, 'Ctrl+Shift+V', read('values')),
      native: false,
    },
  ];
}
