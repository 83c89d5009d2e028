import type { Document } from '../book/types.ts';
import type { Outcome } from '../commands/command.ts';
import { signal, type ReadonlySignal } from '../panels/kit/signals.ts';
import type { SaveView, StartView } from '../panels/workbook.ts';
import type { SaveState } from '../storage/autosave.ts';
import { problem } from '../storage/store.ts';
import { openLibrary, type Library, type OpenedBook, type Opening } from './library.ts';
import { clockWritten, whenWritten } from './place.ts';
import { isThere, templates } from './templates.ts';

export interface ShelfMeans {
  readonly locale: string;
  readonly now: () => Date;
  readonly newId: () => string;
  /** Lays a book on the desk, or clears the desk. */
  readonly lay: (opened: OpenedBook | null) => Promise<void>;
}

/** The kept books, and which of them is open. The address of the page names the open one. */
export interface Shelf {
  readonly start: ReadonlySignal<StartView>;
  readonly save: ReadonlySignal<SaveView>;
  begin(document: Document): Promise<Outcome>;
  open(id: string): Promise<Outcome>;
  remove(id: string): Promise<Outcome>;
  leave(): Promise<Outcome>;
}

const ok: Outcome = { ok: true };

export function createShelf({ locale, now, newId, lay }: ShelfMeans): Shelf {
  const start = signal<StartView>({
    templates: templates.filter(({ id }) => isThere(id)),
    sample: isThere('harbour-hours'),
    kept: [],
    busy: true,
  });
  const save = signal<SaveView>({ state: 'saved', sentence: '' });
  let open: OpenedBook | undefined;

  const heard = (state: SaveState) => (save.value = saveView(state, locale));
  const library: Promise<Library | undefined> = openLibrary({ newId, now, heard }).catch(
    (cause: unknown) => {
      start.value = { ...start.value, busy: false, trouble: problem(cause).message };
      return undefined;
    },
  );

  const list = async () => {
    const kept = (await (await library)?.list().catch(() => [])) ?? [];
    start.value = {
      ...start.value,
      busy: false,
      kept: kept.map(({ id, title, changed }) => ({
        id,
        title,
        when: whenWritten(changed, now(), locale),
      })),
    };
  };
  const close = async () => {
    await open?.close();
    open = undefined;
  };
  const put = async (opening: Opening): Promise<Outcome> => {
    if ('reason' in opening) return { ok: false, reason: opening.reason };
    await close();
    open = opening;
    history.replaceState(null, '', `#${opening.id}`);
    await lay(opening);
    return ok;
  };
  const withLibrary = async (run: (library: Library) => Promise<Outcome>): Promise<Outcome> => {
    const here = await library;
    if (!here) return { ok: false, reason: start.value.trouble ?? '' };
    return run(here).catch((cause: unknown) => ({ ok: false, reason: problem(cause).message }));
  };
  void list();

  return {
    start,
    save,
    open: (id) => withLibrary(async (here) => put(await here.open(id))),
    begin: (document) => withLibrary(async (here) => put(await here.begin(document))),
    remove: (id) =>
      withLibrary(async (here) => {
        await here.remove(id);
        await list();
        return ok;
      }),
    async leave() {
      await close();
      history.replaceState(null, '', location.pathname);
      await lay(null);
      await list();
      return ok;
    },
  };
}

function saveView(state: SaveState, locale: string): SaveView {
  if (state.kind === 'saving') return { state: 'saving', sentence: 'Saving' };
  if (state.kind === 'unsaved') return { state: 'unsaved', sentence: `Not saved. ${state.reason}` };
  const at = state.at === undefined ? '' : ` ${clockWritten(state.at, locale)}`;
  return { state: 'saved', sentence: `Saved${at}, nothing leaves this device` };
}
