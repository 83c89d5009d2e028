import { saveAs } from 'file-saver';
import { words } from '../words/words.ts';

/** Asks for a file; undefined if nothing was chosen. */
export function askForFile(accept: string): Promise<File | undefined> {
  const input = document.createElement('input');
  input.type = 'file';
  input.accept = accept;
  input.hidden = true;
  document.body.append(input);
  return new Promise((resolve) => {
    const end = (file?: File) => {
      input.remove();
      resolve(file);
    };
    input.addEventListener('change', () => end(input.files?.[0]));
    input.addEventListener('cancel', () => end());
    input.click();
  });
}

/** Asks for several files, or for a folder with all that is in it; none if nothing was chosen. */
export function askForFiles(folder: boolean): Promise<readonly File[]> {
  const input = document.createElement('input');
  input.type = 'file';
  input.multiple = true;
  input.webkitdirectory = folder;
  input.hidden = true;
  document.body.append(input);
  return new Promise((resolve) => {
    const end = (files: readonly File[]) => {
      input.remove();
      resolve(files);
    };
    input.addEventListener('change', () => end([...(input.files ?? [])]));
    input.addEventListener('cancel', () => end([]));
    input.click();
  });
}

/** Characters that some file systems refuse. */
const refusedInNames = /[\\/:*?"<>|\p{Cc}]+/gu;

export function saveFile(
  title: string,
  ending: string,
  type: string,
  content: string | Uint8Array,
): void {
  const name = title.replace(refusedInNames, ' ').trim() || words.app.untitled;
  // Bytes that lie in shared memory are none a file can be made of: ours never do.
  const part = typeof content === 'string' ? content : new Uint8Array(content);
  saveAs(new Blob([part], { type }), `${name}.${ending}`);
}

export function saveText(title: string, ending: string, type: string, text: string): void {
  saveFile(title, ending, type, text);
}
