import type { Reader } from './parsed.ts';
import { readWithUnits } from './withUnits.ts';

/** Nothing that glows is colder; `3.2K` is short for 3200 K and must not become 3.2. */
const coldest = 100;

export const readKelvin: Reader = (text, settings) => {
  const kelvin = readWithUnits('colourTemperature', text, settings);
  if (kelvin === undefined || !('value' in kelvin)) return kelvin;
  if (kelvin.value > 0 && kelvin.value < coldest) {
    const meant = Math.round(kelvin.value * 1000);
    return { reason: `${text} is colder than any light. Write ${meant} K if that is meant.` };
  }
  return kelvin;
};
