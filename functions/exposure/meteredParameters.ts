import { light, positive, sampled, between, above } from '../domains.ts';
import type { Parameter } from '../define.ts';

const usualFlat = { ...between(240, 400), source: 'ISO 2720' };
const usualDome = { ...between(320, 540), source: 'ISO 2720' };
const usualSpot = { ...between(10.6, 13.4), source: 'ISO 2720' };

/** How a reading was taken: asked for in the same order by every function that takes readings as written. */
export const meteredParameters = [
  { name: 'meter', quantity: 'text', help: 'How it was metered: "dome", "flat" or "spot".' },
  {
    name: 'iso',
    quantity: 'iso',
    domain: sampled(positive, 25, 25_600),
    help: 'Speed to meter at.',
  },
  { name: 'time', quantity: 'time', domain: above(0, 3600), help: 'Exposure time.' },
  {
    name: 'dome_constant',
    quantity: 'number',
    domain: sampled(positive, 320, 540),
    default: 340,
    usual: usualDome,
    help: 'Incident constant C of the dome.',
  },
  {
    name: 'flat_constant',
    quantity: 'number',
    domain: sampled(positive, 240, 400),
    default: 250,
    usual: usualFlat,
    help: 'Incident constant C of the flat receptor.',
  },
  {
    name: 'spot_constant',
    quantity: 'number',
    domain: sampled(positive, 10.6, 13.4),
    default: 12.5,
    usual: usualSpot,
    help: 'Reflected constant K of the spot meter.',
  },
] as const satisfies readonly Parameter[];

/** A reading as people write it down: in f-numbers, lux, footcandles, candela per square metre or EV. */
export const readingParameter = {
  name: 'reading',
  quantity: 'measured',
  kinds: ['fNumber', 'illuminance', 'luminance', 'ev'],
  domain: sampled(light, 0.7, 64),
  help: 'The reading as written: f/2.8, 85 lx, 11 fc, 1.2 kcd/m2 or 9.5 EV. A plain number is an f-number.',
} as const satisfies Parameter;
