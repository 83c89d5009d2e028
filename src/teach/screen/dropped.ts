import type { ReturnedFile } from '../returned.ts';

/** Files as they came, by the path that they have under what was chosen. */
export const returnedFrom = (files: Iterable<File>): Promise<readonly ReturnedFile[]> =>
  Promise.all(
    Array.from(files, async (file) => ({
      path: file.webkitRelativePath || file.name,
      bytes: new Uint8Array(await file.arrayBuffer()),
    })),
  );

/** Everything that was dropped, folders with what is in them. */
export async function droppedFiles(event: DragEvent): Promise<readonly ReturnedFile[]> {
  // All of it is asked for at once: what was dropped is out of reach after the first wait.
  const dropped = [...(event.dataTransfer?.items ?? [])].map((item) => {
    const entry = item.webkitGetAsEntry();
    const file = entry ? null : item.getAsFile();
    return entry ? inside(entry) : returnedFrom(file ? [file] : []);
  });
  return (await Promise.all(dropped)).flat();
}

async function inside(entry: FileSystemEntry): Promise<readonly ReturnedFile[]> {
  if (entry.isFile) {
    const file = await new Promise<File>((resolve, reject) =>
      (entry as FileSystemFileEntry).file(resolve, reject),
    );
    return [{ path: entry.fullPath.slice(1), bytes: new Uint8Array(await file.arrayBuffer()) }];
  }
  const reader = (entry as FileSystemDirectoryEntry).createReader();
  const found: FileSystemEntry[] = [];
  // A folder is told in parts of a hundred or so, the last one empty.
  for (;;) {
    const part = await new Promise<FileSystemEntry[]>((resolve, reject) =>
      reader.readEntries(resolve, reject),
    );
    if (part.length === 0) break;
    found.push(...part);
  }
  return (await Promise.all(found.map(inside))).flat();
}
