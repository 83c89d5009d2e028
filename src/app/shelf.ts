import type { Document } from '../book/types.ts';
import type { Outcome } from '../commands/command.ts';
import { signal, type ReadonlySignal } from '../panels/kit/signals.ts';
import type { SaveView, StartView } from '../panels/shown.ts';
import type { SaveState } from '../storage/autosave.ts';
import { problem } from '../storage/problems.ts';
import type { KeptBook } from '../storage/kept.ts';
import { saveText } from './file-dialog.ts';
import { binDays, openLibrary, type Library, type OpenedBook, type Opening } from './library.ts';
import { clockWritten, sizeWritten, whenWritten } from './place.ts';
import { createTabs } from './tabs.ts';
import { isThere, templates } from './templates.ts';
import { createVersions, type Versions } from './versions.ts';
import { words } from '../words/words.ts';

export interface ShelfMeans {
  readonly locale: string;
  readonly now: () => Date;
  readonly newId: () => string;
  /** Lays a book on the desk, or clears the desk. */
  readonly lay: (opened: OpenedBook | null) => Promise<void>;
  /** Ends an entry in progress; false if it is refused. */
  readonly finish: () => boolean;
  /** What came of something that nobody waits for. */
  readonly tell: (outcome: Outcome) => void;
}

/** The kept books, and which of them is open. The address of the page names the open one. */
export interface Shelf {
  readonly start: ReadonlySignal<StartView>;
  readonly save: ReadonlySignal<SaveView>;
  begin(document: Document): Promise<Outcome>;
  open(id: string): Promise<Outcome>;
  /** Puts a book in the bin; for good, if it lies there already. */
  remove(id: string): Promise<Outcome>;
  takeOut(id: string): Promise<Outcome>;
  emptyBin(): Promise<Outcome>;
  /** Says no more of the books that the browser has cleared. */
  forgetMissing(): Promise<Outcome>;
  /** Saves what is kept of a book as a file, as it lies there, readable or not. */
  saveRaw(id: string): Promise<Outcome>;
  leave(): Promise<Outcome>;
  /** Has the open book kept by this tab, where another one keeps it. */
  takeOver(): Promise<Outcome>;
  /** Writes what is not kept yet of the open book; false if that cannot be. */
  keepWork(): Promise<boolean>;
  readonly versions: Versions;
  /** The kept book that new ones start from. */
  ownAddresses(): ReturnType<Library['titled']>;
  /** The open book’s. */
  openId(): string | undefined;
  /** Reads the list anew. */
  list(): Promise<void>;
}

const ok: Outcome = { ok: true };
const notKept = words.shelf.notKept;
const retry = 2_000;
/** So long another tab may take to keep what it has and let go. */
const lettingGo = 8_000;

export function createShelf({ locale, now, newId, lay, finish, tell }: ShelfMeans): Shelf {
  const start = signal<StartView>({
    templates: templates.filter(({ id }) => isThere(id)),
    sample: isThere('harbour-hours'),
    kept: [],
    bin: [],
    busy: true,
  });
  const save = signal<SaveView>({ state: 'saved', sentence: '' });
  let open: OpenedBook | undefined;

  const heard = (state: SaveState) => (save.value = saveView(state, locale));
  const library = openLibrary({
    newId,
    now,
    heard,
    cleared: () => tell({ ok: false, reason: words.shelf.cleared }),
    closed: () => void look(),
  });

  const inBin = ({ id, title, size, binned = '' }: KeptBook) => {
    const until = new Date(Date.parse(binned) + binDays * 24 * 60 * 60 * 1_000).toISOString();
    const [since, end] = [binned, until].map((at) => whenWritten(at, now(), locale));
    return {
      id,
      title,
      size: sizeWritten(size, locale),
      when: words.shelf.binTimes(since ?? '', end ?? ''),
    };
  };
  const list = async () => {
    const { trouble: _, missing: __, ...before } = start.value;
    try {
      const bin = (await library.binned()).map(inBin);
      const kept = (await library.list()).map(({ id, title, changed, size }) => ({
        id,
        title,
        when: whenWritten(changed, now(), locale),
        size: sizeWritten(size, locale),
      }));
      const titles = await library.missing();
      const missing = titles.length === 0 ? {} : { missing: words.shelf.missing(titles) };
      start.value = { ...before, busy: false, kept, bin, ...missing };
    } catch (cause) {
      const found = problem(cause);
      start.value = { ...before, busy: false, trouble: found.atStart };
      // While the browser clears or repairs what it keeps it refuses; a little later it does not.
      if (found.kind === 'failed') setTimeout(() => open ?? void list(), retry);
    }
  };
  /** Is everything still where it was kept? */
  const look = () => (open ? open.keepAgain() : list());
  const close = async () => {
    await open?.close();
    open = undefined;
  };
  const clear = async () => {
    history.replaceState(null, '', location.pathname);
    await lay(null);
    await list();
  };
  const put = async (opening: Opening): Promise<Outcome> => {
    if ('reason' in opening) {
      await clear();
      return { ok: false, reason: opening.reason };
    }
    open = opening;
    history.replaceState(null, '', `#${opening.id}`);
    await lay(opening);
    return opening.remark === undefined ? ok : { ok: true, say: opening.remark };
  };
  let warned: OpenedBook | undefined;
  /** A book with changes that are not kept is left only when that is asked for twice. */
  const leaving = async (work: () => Promise<Outcome>): Promise<Outcome> => {
    if (open && !open.isKept() && warned !== open) {
      warned = open;
      return { ok: false, reason: notKept };
    }
    // The book on the desk is let go of first: it may be the one that is opened.
    await close();
    return work().catch(async (cause: unknown) => {
      await clear();
      return failed(cause);
    });
  };
  const begin = (document: Document) => leaving(async () => put(await library.begin(document)));
  const changing = async (work: () => Promise<void>): Promise<Outcome> => {
    try {
      await work();
      return ok;
    } catch (cause) {
      return failed(cause);
    } finally {
      await list();
    }
  };
  const tabs = createTabs();
  const letGo = async (id: string): Promise<void> => {
    if (open?.id !== id || save.value.isElsewhere || !finish() || !(await open.keep())) return;
    await close();
    await put(await library.open(id));
  };
  tabs.hear((id) => void letGo(id).catch((cause: unknown) => tell(failed(cause))));
  void list();
  // Whoever comes back to this page may have cleared the books meanwhile.
  document.addEventListener('visibilitychange', () => {
    if (!document.hidden && !open) void list();
  });

  return {
    start,
    save,
    open: (id) =>
      leaving(async () => {
        const opening = await library.open(id);
        const outcome = await put(opening);
        if ('damaged' in opening)
          start.value = { ...start.value, damaged: { id, reason: opening.reason } };
        if ('gone' in opening) start.value = { missing: words.shelf.goneFor, ...start.value };
        return outcome;
      }),
    begin,
    remove: (id) =>
      changing(() =>
        start.value.bin.some((book) => book.id === id) ? library.remove(id) : library.bin(id),
      ),
    takeOut: (id) => changing(() => library.takeOut(id)),
    emptyBin: () =>
      changing(async () => {
        for (const { id } of start.value.bin) await library.remove(id);
      }),
    forgetMissing: () => changing(() => library.forgetMissing()),
    ownAddresses: () => library.titled(words.templates.addressBook).catch(() => undefined),
    openId: () => open?.id,
    versions: createVersions({ locale, now, library, opened: () => open, begin }),
    list,
    async saveRaw(id) {
      try {
        const text = await library.raw(id);
        if (text === undefined) return { ok: false, reason: words.shelf.nothingKept };
        const title = start.value.kept.find((one) => one.id === id)?.title ?? words.shelf.book;
        saveText(title, 'damaged.txt', 'text/plain', text);
        return { ok: true, say: words.shelf.savedFile };
      } catch (cause) {
        return failed(cause);
      }
    },
    keepWork: async () => (await open?.keep()) ?? true,
    async takeOver() {
      const id = open?.id;
      if (id === undefined || !save.value.isElsewhere)
        return { ok: false, reason: words.shelf.keptHere };
      return leaving(async () => {
        tabs.ask(id);
        const outcome = await put(await library.open(id, lettingGo));
        return save.value.isElsewhere ? { ok: false, reason: words.shelf.notLetGo } : outcome;
      });
    },
    leave: () =>
      leaving(async () => {
        await clear();
        return ok;
      }),
  };
}

const failed = (cause: unknown): Outcome => ({ ok: false, reason: problem(cause).atStart });

function saveView(state: SaveState, locale: string): SaveView {
  if (state.kind === 'saving') return { state: 'saving', sentence: words.shelf.saving };
  if (state.kind === 'unsaved')
    return {
      state: 'unsaved',
      sentence: words.shelf.notSaved(state.reason),
      ...(state.reason === words.storage.elsewhere && { isElsewhere: true }),
    };
  const at = state.at === undefined ? '' : ` ${clockWritten(state.at, locale)}`;
  return { state: 'saved', sentence: words.shelf.saved(at) };
}
