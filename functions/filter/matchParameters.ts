import { between, duvRange, sampled } from '../domains.ts';

/** From candle to skylight: where Planckian light still has a place in the diagram. */
const kelvins = sampled(between(1000, 100_000), 1800, 12_000);

export const lightKelvin = {
  name: 'kelvin',
  quantity: 'colourTemperature',
  domain: kelvins,
  help: 'Colour temperature of the light as it is.',
} as const;

export const lightTint = {
  name: 'duv',
  quantity: 'duv',
  domain: sampled(duvRange, -0.012, 0.012),
  help: 'Its Duv: positive is green.',
} as const;

export const wantedKelvin = {
  name: 'white',
  quantity: 'colourTemperature',
  domain: sampled(kelvins, 2800, 7000),
  help: 'What it should come to: usually the camera’s balance.',
} as const;

export const wantedTint = {
  name: 'white_duv',
  quantity: 'duv',
  domain: sampled(duvRange, -0.004, 0.004),
  help: 'Duv of the white; 0 on the locus.',
} as const;

/** Names of pieces, for the functions that look them up. */
export const piecesParameter = {
  name: 'pieces',
  quantity: 'text',
  help: 'A name in the kit, two joined by " + ", or "none".',
} as const;
