import { tableText } from '../../files/in/bytes.ts';
import { looksLikeSpectra } from '../../files/spectra/looks.ts';
import { fixturesDialog } from '../fixtures/dialog.ts';
import { spectraDialog } from '../spectra/dialog.ts';
import type { Workbook } from '../workbook.ts';

/** More than any file that belongs on a shelf. */
const mostBytes = 5_000_000;

const endings = /\.(?:csv|tsv|txt|xml|spdx|cgats|sp|ti3)$/i;

/** What belongs on a shelf is taken in by the dialog of that shelf; true for the files that were. */
export async function takeOntoShelves(
  files: readonly File[],
  workbook: Workbook,
): Promise<readonly boolean[]> {
  const fixtures = files.map(({ name }) => /\.(?:ies|ldt|tlt)$/i.test(name));
  const spectra = await Promise.all(files.map(isSpectrum));
  const those = (taken: readonly boolean[]) => files.filter((_, index) => taken[index]);
  if (fixtures.includes(true)) fixturesDialog(workbook, those(fixtures));
  if (spectra.includes(true)) spectraDialog(workbook, those(spectra));
  return files.map((_, index) => fixtures[index] === true || spectra[index] === true);
}

async function isSpectrum(file: File): Promise<boolean> {
  if (!endings.test(file.name) || file.size > mostBytes) return false;
  return looksLikeSpectra(tableText(new Uint8Array(await file.arrayBuffer())));
}
