import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isRequired } from './programs.ts';

/** Where Debian’s colord-data keeps CIE tables. */
const folder = '/usr/share/colord';

/** Why a test against those tables is left out; where REQUIRE names colord it fails instead. */
export const withoutColord =
  !existsSync(folder) && !isRequired('colord')
    ? 'colord-data is not installed: nothing outside holds these tables.'
    : undefined;

/** The sets of numbers of one of its files, each with the wavelength that it begins at. */
export function colordSets(path: string): readonly { from: number; values: readonly number[] }[] {
  const text = readFileSync(join(folder, path), 'utf8');
  const from = Number(/SPECTRAL_START_NM\s+"?([\d.]+)/.exec(text)?.[1]);
  const data = /BEGIN_DATA\r?\n([\s\S]*?)END_DATA\b(?!_)/.exec(text)?.[1] ?? '';
  const sets = data.split(/\r?\n/).filter((line) => line.trim() !== '');
  return sets.map((line) => {
    const words = line.trim().split(/\s+/);
    // The first word may be the name of the sample.
    const numbers = words.filter((word, index) => index > 0 || /^[-+.\d]/.test(word)).map(Number);
    return { from, values: numbers };
  });
}
