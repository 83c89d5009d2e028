import type { WritingSettings } from '../settings.ts';
import { foot } from '../units/space.ts';
import { rounded, writeNumber } from './number.ts';
import { written } from './written.ts';
import type { Written } from './written.ts';

/** Feet: `10'6"` where it is whole inches, else decimal feet. */
export function writeFeet(value: number, settings: WritingSettings, decimals?: number): Written {
  const feet = Math.abs(value) / foot;
  const inches = [feet, rounded(feet, { typed: 6 })]
    .map((size) => size * 12)
    .find((size) => Math.abs(size - Math.round(size)) <= 1e-6);
  const whole = Math.round(inches ?? 0);
  if (decimals !== undefined || whole % 12 === 0 || whole > 1e6) {
    return written(writeNumber(value / foot, settings, decimals, { typed: 6 }), 'ft');
  }
  return written(`${value < 0 ? '−' : ''}${Math.floor(whole / 12)}'${whole % 12}"`);
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
