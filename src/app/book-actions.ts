import { addressBook, startFrom } from './address-book.ts';
import { createBook } from '../book/book.ts';
import { photosOn } from '../book/form/photos.ts';
import { newDocument } from '../book/newdocument.ts';
import type { Book } from '../book/types.ts';
import type { Outcome } from '../commands/command.ts';
import type { Action } from './actions.ts';
import type { AppHands } from './app-hands.ts';
import { askForFile } from './file-dialog.ts';
import { settingsHere } from './place.ts';
import { readTemplate, templateAsked } from './read-template.ts';
import { sample } from './templates.ts';
import type { withOpenBook } from './with-desk.ts';
import { words } from '../words/words.ts';

/** Bytes: some ten thousand readings. */
const mostOfWalk = 5_000_000;

/** Whole books: begun, opened, kept, left and saved. */
export function bookActions(
  hands: AppHands,
  { unavailable: needsBook, withDesk }: ReturnType<typeof withOpenBook>,
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
        const template = templateAsked(args);
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
        if (!file) return { ok: true };
        if (file.size > mostOfWalk) return { ok: false, reason: words.walk.tooLarge };
        return hands.act('walk.takeIn', { text: await file.text() });
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
  ];
}
