import type { Taken } from './types.ts';

const twoDigits = (number: number) => String(number).padStart(2, '0');

/** A moment by the clock on the wall: `2026-09-23`, `14:05`. */
export function wallClock(now: Date): Pick<Taken, 'date' | 'time'> {
  const day = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map(twoDigits);
  return {
    date: day.join('-'),
    time: [now.getHours(), now.getMinutes()].map(twoDigits).join(':'),
  };
}
