import type { Reader } from './parsed.ts';
import { readWithUnits } from './withUnits.ts';

/** `800`, `ISO 800`, `EI 800`; of `ISO 800/30°` the arithmetic speed. */
export const readIso: Reader = (text, settings) =>
  readWithUnits('iso', text.replace(/\/ ?\d{1,2} ?°$/u, ''), settings);
