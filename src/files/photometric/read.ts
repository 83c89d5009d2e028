import type { Photometry } from '../../../functions/fixture/photometry.ts';
import { looksLikeEulumdat, readEulumdat } from './eulumdat.ts';
import { Fault } from './fault.ts';
import { looksLikeLm63, readLm63, type Companion } from './lm63.ts';
import { words } from '../../words/words.ts';

export type PhotometricForm = 'LM-63' | 'EULUMDAT';

export type PhotometricFile =
  | {
      readonly ok: true;
      readonly form: PhotometricForm;
      readonly photometry: Photometry;
      /** What people should know about what was read. */
      readonly notes: readonly string[];
    }
  | {
      readonly ok: false;
      /** Counted from 1. */
      readonly line: number;
      /** A sentence with the line; nothing was taken. */
      readonly reason: string;
    };

const mostCharacters = 5_000_000;

/** Reads a photometric file of either form, told apart by how it begins. All of it, or nothing. */
export function readPhotometric(text: string, companion?: Companion): PhotometricFile {
  if (text.length > mostCharacters) return refused(1, words.photometric.tooLarge);
  try {
    if (looksLikeLm63(text)) {
      const { photometry, notes } = readLm63(text, companion);
      return taken('LM-63', photometry, notes);
    }
    if (looksLikeEulumdat(text)) {
      const { photometry, notes } = readEulumdat(text);
      return taken('EULUMDAT', photometry, notes);
    }
    return refused(1, words.photometric.neither);
  } catch (reason) {
    if (!(reason instanceof Fault)) throw reason;
    return refused(reason.line, reason.message);
  }
}

function taken(
  form: PhotometricForm,
  photometry: Photometry,
  notes: readonly string[],
): PhotometricFile {
  if (!Number.isFinite(photometry.lumens)) return refused(1, words.photometric.tooMuch);
  const dark = photometry.peak > 0 ? [] : [words.photometric.noLight];
  return { ok: true, form, photometry, notes: [...notes, ...dark] };
}

function refused(line: number, reason: string): PhotometricFile {
  return { ok: false, line, reason: words.photometric.lineReason(line, reason) };
}
