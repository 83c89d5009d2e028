import { readWithUnits } from './withUnits.ts';
import type { Reader } from './parsed.ts';

const clock = /^(\d{1,3}) ?: ?([0-5]\d)$/u;
const hoursAndMinutes = /^(\d+) ?(?:h|hrs?|hours?) ?(\d{1,2}) ?(?:m|min|mins|minutes?)?$/iu;

/** `10 h`, `8 h 30 min`, `8:30`, `2 d` (48 h). */
export const readDuration: Reader = (text, settings) => {
  const parts = clock.exec(text) ?? hoursAndMinutes.exec(text);
  if (parts === null) return readWithUnits('duration', text, settings);
  const minutes = Number(parts[2]);
  if (minutes > 59) return undefined;
  return { value: Number(parts[1]) + minutes / 60, unitWritten: true };
};
