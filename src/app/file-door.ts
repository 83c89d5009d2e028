import type { PhotoFile } from '../book/form/photos.ts';
import { writeBook } from '../book/form/write.ts';
import type { Book, Document } from '../book/types.ts';
import type { Outcome } from '../commands/command.ts';
import { takeArchive } from './archive.ts';
import { others } from './exchange-actions.ts';
import { askForFile, saveText } from './file-dialog.ts';
import { readApart } from './opening.ts';
import { words } from '../words/words.ts';

/** A file that came in, with the way back to it where the browser gives one. */
export interface Came {
  readonly file: File;
  readonly handle?: FileHandle | undefined;
}

/** The part of the File System Access API that is used here; TypeScript’s own types lack some. */
export interface FileHandle {
  readonly kind: string;
  readonly name: string;
  getFile(): Promise<File>;
  createWritable(): Promise<{ write(text: string): Promise<void>; close(): Promise<void> }>;
  requestPermission?(options: { readonly mode: 'readwrite' }): Promise<string>;
}

interface World {
  showOpenFilePicker?(options: object): Promise<readonly FileHandle[]>;
  launchQueue?: {
    setConsumer(take: (launch: { readonly files: readonly FileHandle[] }) => void): void;
  };
}

export interface FileDoorMeans {
  begin(document: Document): Promise<Outcome>;
  openId(): string | undefined;
  /** What came of it when nobody waits for the outcome. */
  tell(outcome: Outcome): void;
  /** Reads the list of books anew. */
  list(): Promise<void>;
  /** Takes in what belongs on a shelf of the open book; true for each file that was. */
  toShelves(files: readonly File[]): Promise<readonly boolean[]>;
  /** Takes in a file of another program. */
  other(file: File): Outcome;
}

/** Where files come in and go out: the picker, a drop on the window, a double click when installed. */
export interface FileDoor {
  open(): Promise<Outcome>;
  openArchive(): Promise<Outcome>;
  /** Files that were dropped, one after the other; the last book stays on the desk. */
  openDropped(files: readonly Came[]): Promise<Outcome>;
  /** To the file it came from, where that is allowed; else as a download. */
  save(id: string, book: Book, pictures: readonly PhotoFile[]): Promise<Outcome>;
}

const ok: Outcome = { ok: true };
const ending = 'halfstop';
const type = 'application/x-halfstop';

export function createFileDoor(means: FileDoorMeans): FileDoor {
  const world = window as unknown as World;
  /** The way back to the file that a book came from, as long as this page is open. */
  const handles = new Map<string, FileHandle>();

  const openOne = async ({ file, handle }: Came): Promise<Outcome> => {
    if (/\.zip$/i.test(file.name)) return takeArchive(file).finally(() => means.list());
    // A book is known by how it begins, whatever it is called.
    if (!/^\uFEFF?\s*\{/.test(await file.slice(0, 64).text())) return means.other(file);
    const read = await readApart(file);
    if (!read.ok) return read;
    const begun = await means.begin(read.document);
    const id = means.openId();
    if (begun.ok && handle && id !== undefined) handles.set(id, handle);
    return begun;
  };
  const openDropped = async (files: readonly Came[]): Promise<Outcome> => {
    let outcome: Outcome = ok;
    const shelved = await means.toShelves(files.map(({ file }) => file));
    for (const came of files.filter((_, index) => shelved[index] !== true)) {
      outcome = await openOne(came);
      if (!outcome.ok) return { ok: false, reason: `${came.file.name}: ${outcome.reason}` };
    }
    return outcome;
  };
  const withFile = async (handle: FileHandle): Promise<Came> => ({
    file: await handle.getFile(),
    handle,
  });

  world.launchQueue?.setConsumer(({ files }) => {
    if (files.length > 0) void Promise.all(files.map(withFile)).then(openDropped).then(means.tell);
  });
  hearDrops((came) => void came.then(openDropped).then(means.tell));

  return {
    openDropped,
    async open() {
      if (!world.showOpenFilePicker) {
        const file = await askForFile(`.${ending},.json,application/json,${others}`);
        return file ? openOne({ file }) : ok;
      }
      const accept = { [type]: [`.${ending}`], 'application/json': ['.json'] };
      const foreign = { 'application/octet-stream': others.split(',') };
      const types = [
        { description: words.app.books, accept },
        { description: words.app.tables, accept: foreign },
      ];
      const picked = await world.showOpenFilePicker({ types }).catch(() => []);
      return picked[0] ? openOne(await withFile(picked[0])) : ok;
    },
    async openArchive() {
      const file = await askForFile('.zip,application/zip');
      return file ? takeArchive(file).finally(() => means.list()) : ok;
    },
    async save(id, { document }, pictures) {
      const text = writeBook(document, pictures);
      const handle = handles.get(id);
      if (handle && (await written(handle, text)))
        return {
          ok: true,
          say: words.app.savedTo(handle.name),
        };
      saveText(document.title, ending, type, text);
      return {
        ok: true,
        say: words.app.saved(document.title),
      };
    },
  };
}

/** False where it is not allowed, or the file is no longer there. */
async function written(handle: FileHandle, text: string): Promise<boolean> {
  try {
    const permission = await handle.requestPermission?.({ mode: 'readwrite' });
    if (permission === 'denied') return false;
    const writable = await handle.createWritable();
    await writable.write(text);
    await writable.close();
    return true;
  } catch {
    return false;
  }
}

function hearDrops(take: (came: Promise<readonly Came[]>) => void): void {
  const bringsFiles = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
  const { dataset } = document.documentElement;
  addEventListener('dragover', (event) => {
    if (!bringsFiles(event)) return;
    event.preventDefault();
    dataset['dropping'] = '';
  });
  addEventListener('dragleave', (event) => {
    if (event.relatedTarget === null) delete dataset['dropping'];
  });
  addEventListener('drop', (event) => {
    delete dataset['dropping'];
    if (!bringsFiles(event)) return;
    event.preventDefault();
    // Asked for at once: after the event the browser gives nothing away any more.
    const items = [...(event.dataTransfer?.items ?? [])].filter(({ kind }) => kind === 'file');
    take(Promise.all(items.map(cameIn)).then((all) => all.flatMap((one) => one ?? [])));
  });
}

function cameIn(item: DataTransferItem): Promise<Came | undefined> {
  const file = item.getAsFile() ?? undefined;
  const asked = (
    item as { getAsFileSystemHandle?(): Promise<FileHandle | null> }
  ).getAsFileSystemHandle?.();
  return Promise.resolve(asked)
    .catch(() => null)
    .then((handle) => {
      if (!file) return undefined;
      return handle?.kind === 'file' ? { file, handle } : { file };
    });
}
