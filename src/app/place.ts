import type { Settings } from '../book/types.ts';
import { words } from '../words/words.ts';

/** What the browser tells of where its person works, for a new book. Everything can be changed there. */
export function settingsHere(locale: string): Partial<Settings> {
  const decimal = new Intl.NumberFormat(locale)
    .formatToParts(1.5)
    .find(({ type }) => type === 'decimal');
  const { timeZone } = new Intl.DateTimeFormat(locale).resolvedOptions();
  return {
    decimal: decimal?.value === ',' ? ',' : '.',
    zone: timeZone,
    ...(new Intl.Locale(locale).region === 'US' && american),
  };
}

const american = {
  illuminance: 'fc',
  length: 'ft',
  mainsHertz: 60,
  mainsVolts: 120,
  currency: 'USD',
  page: 'Letter',
} as const;

/** "today, 14:02", "3 November". */
export function whenWritten(instant: string, now: Date, locale: string): string {
  const then = new Date(instant);
  const day = (date: Date) => new Intl.DateTimeFormat(locale, { dateStyle: 'short' }).format(date);
  const clock = new Intl.DateTimeFormat(locale, { timeStyle: 'short' }).format(then);
  if (day(then) === day(now)) return words.app.todayAt(clock);
  const sameYear = then.getFullYear() === now.getFullYear();
  return new Intl.DateTimeFormat(locale, {
    day: 'numeric',
    month: 'long',
    ...(!sameYear && { year: 'numeric' }),
  }).format(then);
}

export function clockWritten(instant: string, locale: string): string {
  return new Intl.DateTimeFormat(locale, { timeStyle: 'short' }).format(new Date(instant));
}

const kilobyte = 1_000;

/** "48 kB", "1.2 MB". A character is a byte, near enough. */
export function sizeWritten(characters: number, locale: string): string {
  const [unit, by] =
    characters < kilobyte ** 2
      ? (['kilobyte', kilobyte] as const)
      : (['megabyte', kilobyte ** 2] as const);
  const most = unit === 'kilobyte' ? 0 : 1;
  return new Intl.NumberFormat(locale, { style: 'unit', unit, maximumFractionDigits: most }).format(
    Math.max(1, characters / by),
  );
}
