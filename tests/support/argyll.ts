import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { installed, isRequired } from './programs.ts';

const specplot = installed('specplot');

/** Why a test against Argyll is left out; where REQUIRE names argyll it fails instead. */
export const withoutArgyll =
  specplot === undefined && !isRequired('argyll')
    ? 'Argyll (specplot) is not installed: nothing outside computes these indices.'
    : undefined;

interface Plotted {
  readonly cct: number;
  readonly ra: number;
  readonly r9: number;
  readonly tlci: number;
}

/** Argyll’s own form of CGATS: each band a field, each value with a decimal point. */
function spectralFile(rows: readonly (readonly [nm: number, power: number])[]): string {
  const fields = rows.map(([nm]) => `SPEC_${String(nm)}`);
  const keys = {
    SPECTRAL_BANDS: rows.length,
    SPECTRAL_START_NM: rows[0]?.[0],
    SPECTRAL_END_NM: rows.at(-1)?.[0],
    SPECTRAL_NORM: '1.0',
  };
  return [
    ...['SPECT', '', 'DESCRIPTOR "test"', 'ORIGINATOR "test"'],
    ...Object.entries(keys).flatMap(([key, value]) => [
      `KEYWORD "${key}"`,
      `${key} "${String(value)}"`,
    ]),
    ...fields.map((field) => `KEYWORD "${field}"`),
    ...[`NUMBER_OF_FIELDS ${String(rows.length)}`, 'BEGIN_DATA_FORMAT', fields.join(' ')],
    ...['END_DATA_FORMAT', '', 'NUMBER_OF_SETS 1', 'BEGIN_DATA'],
    ...[rows.map(([, power]) => power.toFixed(6)).join(' '), 'END_DATA', ''],
  ].join('\n');
}

/** What Argyll says of a light that is read every 5 nm. */
export function plotted(rows: readonly (readonly [nm: number, power: number])[]): Plotted {
  if (specplot === undefined) throw new Error('Argyll (specplot) is not installed.');
  const folder = mkdtempSync(join(tmpdir(), 'halfstop-argyll-'));
  try {
    const file = join(folder, 'light.sp');
    writeFileSync(file, spectralFile(rows));
    const said = execFileSync(specplot, ['-s', file], { encoding: 'utf8' });
    const number = (what: RegExp) => Number(what.exec(said)?.[1]);
    return {
      cct: number(/CCT = ([\d.]+)/),
      ra: number(/CRI = ([-\d.]+)/),
      r9: number(/R9 = ([-\d.]+)/),
      tlci: number(/TLCI = ([-\d.]+)/),
    };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
