import { plural } from './plural.ts';

/** The log of set-ups. */
export const log = {
  log: 'Log this set-up',
  noLog: 'This book has no set-up log yet: add the sheet “Set-up log”, then log again.',
  noColumns:
    'The set-up log has lost its captions “Scene”, “Light” or “Found”, so nothing was logged.',
  full: (rows: number) =>
    `The set-up log has no room for ${plural(rows, 'row')}: fill its last row down, then log again.`,
  camera: (index: string, time: string, stop: string) => `${index}, ${time}, ${stop}`,
  gel: (text: string) => `gel ${text}`,
  diffusion: (text: string) => `diffusion ${text}`,
  logged: (setUp: string, lights: number, readings: number) =>
    `${setUp} is logged: ${plural(lights, 'light')}, ${plural(readings, 'reading')}.`,
} as const;
