/**
 * How numbers are written and shown: one switch for each pair that people argue about.
 * Throwing a switch never changes a number, only how the next one is read and how all are shown.
 */
export interface WritingSettings {
  readonly decimal: '.' | ',';
  readonly illuminance: 'lx' | 'fc';
  readonly luminance: 'cd/m²' | 'fL';
  readonly length: 'm' | 'ft';
  readonly shutter: 'time' | 'angle';
  /** How f-numbers are said: marks and thirds, halves, whole stops with tenths, or plain decimals. */
  readonly fNumbers: 'thirds' | 'halves' | 'tenths' | 'decimals';
  readonly clock: '24' | '12';
  readonly currency: string;
}

export const defaultWriting: WritingSettings = {
  decimal: '.',
  illuminance: 'lx',
  luminance: 'cd/m²',
  length: 'm',
  shutter: 'time',
  fNumbers: 'thirds',
  clock: '24',
  currency: 'EUR',
};
