import type { RangeArgument } from '../../../functions/values.ts';
import { checkReadings } from '../../../functions/spectrum/readings.ts';
import type { Spectrum } from '../../../functions/spectrum/spectrum.ts';
import file from '../cases/illuminants.json' with { type: 'json' };

interface Table {
  readonly from: number;
  readonly values: readonly number[];
}

const tables: Readonly<Record<string, Table>> = file.spectra;

export const illuminants: readonly string[] = Object.keys(tables);

/** A CIE illuminant as two columns, wavelength and power. */
export function rowsOf(name: string, scale = 1): readonly (readonly [nm: number, power: number])[] {
  const table = tables[name];
  if (!table) throw new Error(`There is no illuminant ${name}.`);
  return table.values.map((value, index) => [table.from + 5 * index, scale * value]);
}

/** The same as cells of a sheet. */
export function cellsOf(name: string, scale = 1): RangeArgument {
  return { cells: rowsOf(name, scale).flatMap((row) => row.map((value) => ({ value }))), width: 2 };
}

export function spectrumOf(name: string): Spectrum {
  const readings = rowsOf(name).map(([nm, value]) => ({ nm, value }));
  const checked = checkReadings(readings, 'shape');
  if (!checked.ok) throw new Error(checked.fault.kind);
  return checked.spectrum;
}
