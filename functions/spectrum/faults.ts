import {
  mostReadings,
  mustBegin,
  mustEnd,
  widestGap,
  type Fault,
  type Reading,
} from './readings.ts';
import type { MadeUp } from './spectrum.ts';

/** Why readings make no spectrum, as the end of a sentence that begins with what they are of. */
export function faultWords(fault: Fault, readings: readonly Reading[]): string {
  switch (fault.kind) {
    case 'few':
      return `must have from 5 to ${mostReadings} wavelengths, not ${readings.length}.`;
    case 'dark':
      return 'gives nothing from 380 to 780 nm.';
    case 'short':
      return fault.end === 'low'
        ? `must begin at ${mustBegin} nm at least, not at ${nmAt(readings, fault.at)}.`
        : `must go on to ${mustEnd} nm at least, not to ${nmAt(readings, fault.at)}.`;
    case 'unit':
      return `must have wavelengths in nanometres, not ${nmAt(readings, fault.at)}.`;
    case 'order':
      return `must have rising wavelengths: ${nmAt(readings, fault.at)} comes after ${nmAt(readings, fault.at - 1)}.`;
    case 'gap':
      return `has a gap from ${nmAt(readings, fault.at - 1)} to ${nmAt(readings, fault.at)} nm; at most ${widestGap} nm can be bridged.`;
    case 'huge':
      return `is too large at ${nmAt(readings, fault.at)} nm.`;
    case 'negative':
      return `must be zero or more, not ${readings[fault.at]?.value ?? 0} at ${nmAt(readings, fault.at)} nm.`;
    case 'passing':
      return `must let through from 0 to 1, not ${readings[fault.at]?.value ?? 0} at ${nmAt(readings, fault.at)} nm.`;
  }
}

const nmAt = (readings: readonly Reading[], at: number): number => readings[at]?.nm ?? Number.NaN;

/** What was made up, as a sentence about a spectrum. */
export function madeUpWords(madeUp: readonly MadeUp[]): string | undefined {
  const parts = madeUp.map(({ kind, from, to }) => {
    switch (kind) {
      case 'below':
        return `below ${to} nm nothing was read, so the first reading stands for it down to ${from}`;
      case 'above':
        return `above ${from} nm nothing was read, so the last reading stands for it up to ${to}`;
      case 'gap':
        return `the gap from ${from} to ${to} nm is bridged by a straight line`;
      case 'noise':
        return `less than nothing between ${from} and ${to} nm counts as nothing`;
    }
  });
  if (parts.length === 0) return undefined;
  const text = parts.join('; ');
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`;
}
