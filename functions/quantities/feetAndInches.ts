import { readAmount } from './amount.ts';
import type { Reader } from './parsed.ts';
import { foot } from './units/space.ts';

const pattern = /^([+-]?) ?(\d+) ?(?:'|ft\.?|feet|foot) ?-? ?(\S.*)$/iu;

/** `10'6"`, `10 ft 6 in`, `11'6 1/2"`, `10'6`: whole feet with inches behind them. */
export const readFeetAndInches: Reader = (text) => {
  const [, sign, feet, behind = ''] = pattern.exec(text) ?? [];
  const inches = readAmount(behind, { decimal: '.', small: true });
  if (inches === undefined || inches.sign !== '') return undefined;
  if (!/^(?:"|''|in\.?|inch|inches)?$/iu.test(inches.rest) || inches.value >= 12) return undefined;
  const size = Number(feet) * foot + (inches.value * foot) / 12;
  return { value: sign === '-' ? -size : size, unitWritten: true };
};
