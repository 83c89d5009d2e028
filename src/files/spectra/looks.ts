import { linesOf } from '../photometric/words.ts';
import { looksLikeCgats } from './cgats.ts';
import { readSpectra } from './read.ts';

/** Within so many characters a table has said what it is of. */
const head = 2_000;

/** Whether a text is meant for a spectrum, be it a broken one, and not for a sheet. */
export function looksLikeSpectra(text: string): boolean {
  if (/<Spectral(?:Distribution|Data)\b/.test(text)) return true;
  if (looksLikeCgats(linesOf(text))) return true;
  return /\bnm\b|wavelength/i.test(text.slice(0, head)) || readSpectra(text).ok;
}
