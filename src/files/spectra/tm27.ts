import type { Measures } from '../../../functions/spectrum/spectrum.ts';
import { Refused } from '../in/refused.ts';
import { local, walk } from '../in/xml.ts';
import { Fault, numberFrom } from '../photometric/fault.ts';
import { shortened } from '../photometric/words.ts';
import type { Found, Row } from './found.ts';
import { words } from '../../words/words.ts';

export const looksLikeXml = (text: string): boolean => /^\s*</.test(text);

/** Quantities of TM-27 that are more than a shape; an irradiance is in W/(m²·nm) (from memory). */
const quantities: ReadonlyMap<string, Measures> = new Map([
  ['irradiance', 'irradiance'],
  ['transmittance', 'transmission'],
]);

/** Reads ANSI/IES TM-27 XML: SpectralData elements with their wavelength, under a quantity. */
export function readTm27(text: string): readonly Found[] {
  let [line, within, value] = [1, '', ''];
  let [quantity, name, wavelength] = ['', '', ''];
  let spectral = false;
  const rows: Row[] = [];
  const close = (element: string) => {
    if (element === 'SpectralQuantity') quantity = value.trim();
    if (element === 'Description' && name === '') name = value.trim();
    if (element === 'SpectralData')
      rows.push({ nm: parsed(wavelength, words.spectra.aWavelength, line), ...power(value, line) });
    within = '';
  };
  try {
    walk(new TextEncoder().encode(text), words.spectra.theFile, local, {
      line: (at) => (line = at),
      open(element, attributes) {
        if (element === 'SpectralDistribution') spectral = true;
        [within, value, wavelength] = [element, '', attributes['wavelength'] ?? ''];
      },
      text(more) {
        if (within !== '') value += more;
      },
      close,
    });
  } catch (reason) {
    if (reason instanceof Refused) throw new Fault(line, reason.message);
    throw reason;
  }
  if (!spectral && rows.length === 0) throw new Fault(1, words.spectra.otherXml);
  if (rows.length === 0) throw new Fault(line, words.spectra.noData);
  return [{ name, measures: quantities.get(quantity.toLowerCase()) ?? 'shape', rows }];
}

function parsed(text: string, what: string, line: number): number {
  const number = numberFrom(text.trim());
  if (Number.isFinite(number)) return number;
  const said =
    text.trim() === ''
      ? words.spectra.empty(what)
      : words.photometric.noNumber(shortened(text.trim()), what);
  throw new Fault(line, said);
}

const power = (text: string, line: number) => ({
  value: parsed(text, words.spectra.aPower, line),
  line,
});
