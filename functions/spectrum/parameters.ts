import type { TableCell, TableRow } from '../values.ts';
import { isError, refuse, type FunctionError } from '../values.ts';
import { faultWords, madeUpWords } from './faults.ts';
import { lightOf, through, type Light } from './light.ts';
import { checkReadings, type Reading } from './readings.ts';
import type { Spectra } from './spectra.ts';
import { longest, shortest, type Measures, type Spectrum } from './spectrum.ts';

export const spectrum = {
  name: 'spectrum',
  quantity: 'table',
  range: true,
  help: 'Two columns of cells, wavelength in nanometres and power, or the name of a spectrum kept in the book.',
} as const;

export const givenFilter = {
  name: 'filter',
  quantity: 'table',
  range: true,
  help: 'What the light goes through: two columns, wavelength in nanometres and the share let through (0 to 1), or the name of a filter kept in the book.',
} as const;

export const filter = { ...givenFilter, optional: true } as const;

export const noFormula = 'It is summed over tables of the CIE, wavelength by wavelength.';

const shown = 5;

/** The spectrum that an argument means: its cells, or a name. */
function found(
  caller: string,
  parameter: string,
  spectra: Spectra,
  rows: readonly TableRow[],
  measures: Measures,
): Spectrum | FunctionError {
  const only = rows.length === 1 && rows[0]?.length === 1 ? rows[0][0]?.value : undefined;
  if (typeof only === 'string')
    return spectrumNamed(caller, spectra, only, measures === 'transmission');
  const readings = readingsIn(caller, parameter, rows);
  if (isError(readings)) return readings;
  const checked = checkReadings(readings, measures);
  if (checked.ok) return checked.spectrum;
  return refuse(`${caller}: ${parameter} ${faultWords(checked.fault, readings)}`);
}

function readingsIn(
  caller: string,
  parameter: string,
  rows: readonly TableRow[],
): readonly Reading[] | FunctionError {
  if ((rows[0]?.length ?? 0) !== 2)
    return refuse(
      `${caller}: ${parameter} must be two columns, wavelength and value, or a name.`,
      '#VALUE!',
    );
  const readings: Reading[] = [];
  for (const [index, [first, second]] of rows.entries()) {
    if (first?.value === undefined || second?.value === undefined) continue;
    if (index === 0 && isText(first) && isText(second)) continue;
    const text = [first, second].find((cell) => typeof cell.value !== 'number');
    if (text) {
      const where = text.at ? ` in ${text.at}` : '';
      return refuse(
        `${caller}: ${parameter} has ${JSON.stringify(text.value)}${where}, where a number is wanted.`,
        '#VALUE!',
      );
    }
    readings.push({ nm: Number(first.value), value: Number(second.value) });
  }
  if (readings.length > 0) return readings;
  return { code: '#N/A', message: `waiting for ${parameter}`, waiting: true };
}

const isText = ({ value }: TableCell): boolean => typeof value === 'string';

function spectrumNamed(
  caller: string,
  spectra: Spectra,
  name: string,
  filters: boolean,
): Spectrum | FunctionError {
  const named = spectra.named(name);
  const wanted = name.length > 60 ? `${name.slice(0, 60)}…` : name;
  if (typeof named === 'string')
    return refuse(`${caller}: “${wanted}” cannot be read. ${named}`, '#N/A');
  if (named === undefined) {
    const { names } = spectra;
    const there =
      names.length === 0
        ? 'none is kept in it yet'
        : `it has ${names.slice(0, shown).join(', ')}${names.length > shown ? ' and others' : ''}`;
    return refuse(`${caller}: the book has no spectrum “${wanted}”; ${there}.`, '#N/A');
  }
  if (!filters && named.measures === 'transmission')
    return refuse(`${caller}: “${wanted}” is a filter, and a light is wanted here.`, '#VALUE!');
  if (filters && named.values.some((value) => value > 1))
    return refuse(
      `${caller}: “${wanted}” is no filter: it must let through from 0 to 1.`,
      '#VALUE!',
    );
  return named;
}

/** The light that the arguments mean, behind its filter if there is one. */
export function lightFrom(
  caller: string,
  spectra: Spectra,
  rows: readonly TableRow[],
  filterRows?: readonly TableRow[],
): Light | FunctionError {
  const light = found(caller, spectrum.name, spectra, rows, 'irradiance');
  if (isError(light)) return light;
  if (filterRows === undefined) return lightOf(light);
  const passing = found(caller, filter.name, spectra, filterRows, 'transmission');
  if (isError(passing)) return passing;
  const behind = lightOf(through(light, passing));
  if (behind.tristimulus.Y > 0) return behind;
  return refuse(`${caller}: nothing comes through the filter.`);
}

/** A light or filter of the arguments by wavelength, for a comparison. */
export function referenceFrom(
  caller: string,
  spectra: Spectra,
  rows: readonly TableRow[],
): Spectrum | FunctionError {
  return found(caller, 'reference', spectra, rows, 'irradiance');
}

/** What was made up about a spectrum, for the cell to remark on. */
export function remarkOn(spectra: Spectra, rows: readonly TableRow[]): string | undefined {
  const light = found('', spectrum.name, spectra, rows, 'irradiance');
  return isError(light) ? undefined : madeUpWords(light.madeUp ?? []);
}

/** Beyond these the parts of a light are not looked at, said once for all functions. */
export const summedOver = `Summed from ${shortest} to ${longest} nm, every 5 nm as the standards are computed, every 1 nm where it is read more closely.`;
