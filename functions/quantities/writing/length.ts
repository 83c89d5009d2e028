import type { WritingSettings } from '../settings.ts';
import { foot } from '../units/space.ts';
import { writeNumber } from './number.ts';
import { written } from './written.ts';
import type { Written } from './written.ts';

/** Feet: `10'6"` where it is whole inches, else decimal feet. */
export function writeFeet(value: number, settings: WritingSettings, decimals?: number): Written {
  const inches = Math.round((Math.abs(value) / foot) * 12);
  const exact = Math.abs(inches - (Math.abs(value) / foot) * 12) <= 1e-6;
  if (decimals !== undefined || !exact || inches % 12 === 0 || inches > 1e6) {
    return written(writeNumber(value / foot, settings, decimals, { typed: 6 }), 'ft');
  }
  return written(`${value < 0 ? '−' : ''}${Math.floor(inches / 12)}'${inches % 12}"`);
}

/** Feet and inches, to the nearest half inch. */
export function writeFeetAndInches(value: number): Written {
  const halves = Math.round((Math.abs(value) / foot) * 24);
  const inches = Math.floor((halves % 24) / 2);
  const half = halves % 2 === 1 ? (inches === 0 ? '½' : ' ½') : '';
  const shownInches = inches === 0 && half !== '' ? '' : String(inches);
  const minus = value < 0 && halves > 0 ? '−' : '';
  return written(`${minus}${Math.floor(halves / 24)}'${shownInches}${half}"`);
}
