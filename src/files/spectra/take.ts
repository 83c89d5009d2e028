import type { KeptSpectrum } from '../../book/spectra.ts';
import { tableText } from '../in/bytes.ts';
import type { GivenFile } from '../photometric/take.ts';
import { readSpectra, type NamedSpectrum } from './read.ts';

export type Taken =
  | {
      readonly ok: true;
      /** Ready for the shelf. */
      readonly spectra: readonly Omit<KeptSpectrum, 'id'>[];
      readonly notes: readonly string[];
    }
  | { readonly ok: false; readonly file: string; readonly reason: string };

/** Reads a file of spectra for the shelf: each under its heading, or under the file’s name. */
export function takeSpectra({ name: file, content }: GivenFile): Taken {
  const read = readSpectra(tableText(content));
  if (!read.ok) return { ok: false, file, reason: read.reason };
  const { spectra } = read;
  const several = spectra.length > 1;
  return {
    ok: true,
    spectra: spectra.map((one) => kept(one, file)),
    notes: [
      ...new Set(
        spectra.flatMap(({ name, notes }) =>
          notes.map((note) => (several && name !== '' ? `${name}: ${note}` : note)),
        ),
      ),
    ],
  };
}

function kept({ name, spectrum }: NamedSpectrum, file: string): Omit<KeptSpectrum, 'id'> {
  return {
    name: name.slice(0, 60).trim() || file.replace(/^.*[/\\]/, '').replace(/\.[^.]*$/, ''),
    kind: spectrum.measures,
    nm: [...spectrum.nanometres],
    values: [...spectrum.values],
    file,
  };
}
