import { readAmount } from './amount.ts';
import type { Reader } from './parsed.ts';
import { foot } from './units/space.ts';

const pattern = /^([+-]?) ?(\d+) ?(?:'|ft\.?|feet|foot) ?-? ?(\S.*)$/iu;

/** `10'6"`, `10 ft 6 in`, `11'6 1/2"`, `10'6`: whole feet with inches behind them. */
export const readFeetAndInches: Reader = (text) => {
  const found = pattern.exec(text);
  const inches = readAmount(found?.[3] ?? '', { decimal: '.', small: true });
  if (found === null || inches === undefined || inches.sign !== '') return undefined;
  if (!/^(?:"|''|in\.?|inch|inches)?$/iu.test(inches.rest) || inches.value >= 12) return undefined;
  const size = Number(found[2]) * foot + (inches.value * foot) / 12;
  return { value: found[1] === '-' ? -size : size, unitWritten: true };
};
