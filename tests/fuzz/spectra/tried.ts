import { consistencyFrom, renderingFrom } from '../../../functions/spectrum/indices.ts';
import { lightOf, luxOf, peakOf } from '../../../functions/spectrum/light.ts';
import type { Spectrum } from '../../../functions/spectrum/spectrum.ts';
import { isError } from '../../../functions/values.ts';
import { readSpectra } from '../../../src/files/spectra/read.ts';
import { type Chance, mutated } from '../mutated.ts';
import type { Tried } from '../tried.ts';

const odd = [
  ...['-1', '0', '1', '380', '1e308', '-1e308', '1e-320', '999999999', 'NaN', 'Infinity', '1,5'],
  ...['', ',', ';', '\t', '0x10', '１２', '\u0000', '🎬', '--5', '1e', '.', '%', '"', '<', '&x;'],
  ...['BEGIN_DATA', 'END_DATA', 'SPEC_380', 'W/m²/nm', 'transmission %', '</SpectralData>'],
  ...['<!DOCTYPE x [<!ENTITY a "b">]>', '<![CDATA[', '__proto__', '#', 'SPECTRAL_NM'],
];

/** Mutates a file once to thrice, reads it, and asks what was read for all that people ask. */
export function tried(file: string, next: Chance): Tried {
  const text = mutated(file, odd, next);
  const result = readSpectra(text);
  if (!result.ok) {
    const proper = /^Line \d+: \S.*[.] Nothing was taken\.$/su.test(result.reason);
    const inside = result.line >= 1 && result.line <= text.split(/\r\n|\n|\r/).length;
    return { text, read: false, fault: proper && inside ? undefined : result.reason };
  }
  const wrong = result.spectra.flatMap(({ spectrum }) => figures(spectrum, next)).find(isWrong);
  return { text, read: true, fault: wrong === undefined ? undefined : `It gives ${wrong}.` };
}

const isWrong = (number: number) => !Number.isFinite(number);

function figures(spectrum: Spectrum, next: Chance): readonly number[] {
  const light = lightOf(spectrum);
  const numbers = [light.xy.x, light.xy.y, luxOf(light), peakOf(spectrum)];
  // The indices take longest, and the light is the same for all of them.
  if (next() < 0.8) return numbers;
  const rendering = renderingFrom('', light);
  const consistency = consistencyFrom('', light);
  if (!isError(rendering)) numbers.push(rendering.general, ...rendering.special);
  if (!isError(consistency)) numbers.push(consistency);
  return numbers;
}
