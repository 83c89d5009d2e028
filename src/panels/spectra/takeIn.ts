import type { NewSpectrum } from '../../book/make/spectra.ts';
import { takeSpectra } from '../../files/spectra/take.ts';
import type { Incoming, TakenIn } from '../shelf/bringing.ts';
import { words } from '../../words/words.ts';

/** Far more than any file of spectra: what is larger is not opened. */
const mostBytes = 5_000_000;

/** Reads the files one after the other. Each is taken whole or not at all. */
export async function takeIn(
  files: readonly Incoming[],
  progress: (done: number) => void,
): Promise<TakenIn<NewSpectrum>> {
  const spectra: NewSpectrum[] = [];
  const [refused, notes]: [string[], string[]] = [[], []];
  for (const [index, file] of files.entries()) {
    progress(index);
    if (file.size > mostBytes) {
      refused.push(words.spectraList.of(file.name, words.spectra.tooLarge));
      continue;
    }
    const content = new Uint8Array(await file.arrayBuffer());
    const taken = takeSpectra({ name: file.name, content });
    if (taken.ok) {
      spectra.push(...taken.spectra);
      notes.push(...taken.notes.map((note) => words.spectraList.of(file.name, note)));
    } else refused.push(words.spectraList.of(file.name, taken.reason));
  }
  return { things: spectra, sentences: [...refused, ...notes] };
}
