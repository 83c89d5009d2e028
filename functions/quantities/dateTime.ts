import type { Reader } from './parsed.ts';

const date = /^(\d{4})-(\d{2})-(\d{2})(?:[T ]+(.+))?$/u;
const clock = /^([01]?\d|2[0-3]):([0-5]\d)(?::([0-5]\d))?(?: ?([ap])\.?m\.?)?$/iu;

const dayLength = 86_400_000;

/** Day 0 of spreadsheets, so that day 1 is the last of 1899. */
const dayZero = Date.UTC(1899, 11, 30);

/** Days since the end of 1899, as spreadsheets count them; a time of day alone is a share of a day. */
export const readDateTime: Reader = (text) => {
  const found = date.exec(text);
  if (found === null) {
    const time = readClock(text);
    return time === undefined ? undefined : { value: time, unitWritten: true };
  }
  const [, year, month, day, timeOfDay] = found;
  const time = timeOfDay === undefined ? 0 : readClock(timeOfDay);
  const days = dayNumber(Number(year), Number(month), Number(day));
  if (days === undefined) return { reason: `There is no day ${year}-${month}-${day}.` };
  return time === undefined ? undefined : { value: days + time, unitWritten: true };
};

function dayNumber(year: number, month: number, day: number): number | undefined {
  const moment = new Date(Date.UTC(year, month - 1, day));
  const exists = moment.getUTCMonth() === month - 1 && moment.getUTCDate() === day;
  const days = (moment.getTime() - dayZero) / dayLength;
  return exists && days >= 1 ? days : undefined;
}

function readClock(text: string): number | undefined {
  const found = clock.exec(text);
  if (found === null) return undefined;
  const half = found[4]?.toLowerCase();
  const hour = Number(found[1]);
  if (half !== undefined && (hour < 1 || hour > 12)) return undefined;
  const hours = half === undefined ? hour : (hour % 12) + (half === 'p' ? 12 : 0);
  return (hours * 3600 + Number(found[2]) * 60 + Number(found[3] ?? 0)) / 86_400;
}

/** "2026-11-24 14:06", to the minute or, where there are some, the second. */
export function writeDateTime(value: number, hours: '24' | '12'): string {
  const nearest = Math.round(value * 86_400);
  // Half a second before midnight is still a time of day, not the day after day 0.
  const seconds = value < 1 ? Math.min(nearest, 86_399) : nearest;
  const days = Math.floor(seconds / 86_400);
  const left = seconds - days * 86_400;
  const day = new Date(dayZero + days * dayLength);
  const written = Number.isNaN(day.getTime()) ? String(value) : day.toISOString().slice(0, 10);
  if (left === 0 && days > 0) return written;
  const time = writeClock(left, hours);
  return days === 0 ? time : `${written} ${time}`;
}

function writeClock(seconds: number, hours: '24' | '12'): string {
  const two = (number: number): string => String(number).padStart(2, '0');
  const hour = Math.floor(seconds / 3600);
  const minute = two(Math.floor(seconds / 60) % 60);
  const second = seconds % 60 === 0 ? '' : `:${two(seconds % 60)}`;
  if (hours === '24') return `${two(hour)}:${minute}${second}`;
  return `${hour % 12 === 0 ? 12 : hour % 12}:${minute}${second} ${hour < 12 ? 'am' : 'pm'}`;
}
