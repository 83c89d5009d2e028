import type { Photometry } from '../../../functions/fixture/photometry.ts';
import type { KeptFile } from '../../book/fixtures.ts';
import { linesOf } from './words.ts';
import { tableText } from '../in/bytes.ts';
import { readPhotometric } from './read.ts';
import { sha256 } from './sha256.ts';

/** A file as it was given: its name and what is in it. */
export interface GivenFile {
  readonly name: string;
  readonly content: Uint8Array;
}

export type Taken =
  | {
      readonly ok: true;
      /** Ready for the shelf. */
      readonly fixture: Omit<KeptFile, 'id'>;
      readonly photometry: Photometry;
      readonly notes: readonly string[];
    }
  | { readonly ok: false; readonly file: string; readonly reason: string };

/** The tilt file that an LM-63 file names, if it names one. */
export function tiltFileOf(text: string): string | undefined {
  for (const line of linesOf(text)) {
    const named = /^\s*TILT\s*=\s*(.*?)\s*$/i.exec(line)?.[1];
    if (named === undefined) continue;
    return /^(?:NONE|INCLUDE|)$/i.test(named) ? undefined : named;
  }
  return undefined;
}

/** Reads a photometric file for the shelf, under its own name or the one given. */
export function takeFile({ name: file, content }: GivenFile, name?: string, tilt?: string): Taken {
  const text = tableText(content);
  const read = readPhotometric(text, () => tilt);
  if (!read.ok) return { ok: false, file, reason: read.reason };
  const { photometry, notes } = read;
  const called = name ?? (photometry.name.slice(0, 60).trim() || file.replace(/\.[^.]*$/, ''));
  const fixture = {
    name: called,
    kind: 'file',
    file,
    text,
    hash: sha256(text),
    ...(tilt !== undefined && { tilt }),
  } as const;
  return { ok: true, fixture, photometry, notes };
}
