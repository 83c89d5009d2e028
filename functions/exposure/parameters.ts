import type { Parameter } from '../define.ts';
import {
  between,
  exposureTime,
  isoSpeed,
  lensStop,
  levelOrNone,
  lightLevel,
  positive,
  sampled,
} from '../domains.ts';

// What the functions of the exposure equation N²/t = E·S/C = L·S/K have in common.

export const fNumber = {
  name: 'f_number',
  quantity: 'fNumber',
  domain: lensStop,
  help: 'The f-number set, or the T-number where the lens has one.',
} as const satisfies Parameter;

export const time = {
  name: 'time',
  quantity: 'time',
  domain: exposureTime,
  help: 'Exposure time of one frame, as written: 1/50 is 1/50.',
} as const satisfies Parameter;

export const iso = {
  name: 'iso',
  quantity: 'iso',
  domain: isoSpeed,
  help: 'Speed that the camera or the meter is set to.',
} as const satisfies Parameter;

export const lux = {
  name: 'lux',
  quantity: 'illuminance',
  domain: lightLevel,
  help: 'Illuminance at the subject.',
} as const satisfies Parameter;

export const luxOrNone = { ...lux, domain: levelOrNone } as const satisfies Parameter;

export const luminance = {
  name: 'luminance',
  quantity: 'luminance',
  domain: lightLevel,
  help: 'Spot reading of the surface.',
} as const satisfies Parameter;

export const luminanceOrNone = { ...luminance, domain: levelOrNone } as const satisfies Parameter;

/** The ranges of C for flat and dome receptors meet enough to be read as one. */
const usualReceptor = { ...between(240, 540), source: 'ISO 2720' } as const;

const receptorParameter = {
  name: 'receptor',
  quantity: 'receptor',
  domain: sampled(positive, 200, 600),
  usual: usualReceptor,
} as const;

/** The receptor of the book, a dome unless it was changed. */
export const receptor = {
  ...receptorParameter,
  help: '"dome", "flat" or a constant C; the book’s receptor unless given.',
  fromBook: 'receptor',
} as const satisfies Parameter;

/** Published tables of exposure values are for a flat receptor. */
export const flatReceptor = {
  ...receptorParameter,
  help: '"flat", "dome" or a constant C; flat unless given, as in published tables.',
  default: 'flat',
} as const satisfies Parameter;

export const constant = {
  name: 'constant',
  quantity: 'number',
  domain: sampled(positive, 8, 16),
  default: 12.5,
  usual: { ...between(10.6, 13.4), source: 'ISO 2720' },
  help: 'Reflected-light constant K of the meter; 12.5 unless given.',
} as const satisfies Parameter;
