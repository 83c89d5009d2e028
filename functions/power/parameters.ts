import type { Parameter } from '../define.ts';
import { oneOf, positive, sampled, shareAboveZero, zeroOrMore } from '../domains.ts';

// What the functions of circuits and batteries have in common.

export const watts = {
  name: 'watts',
  quantity: 'power',
  domain: sampled(zeroOrMore, 0, 20_000),
  help: 'What the fixture draws, all of it: ballast and driver included.',
} as const satisfies Parameter;

export const volts = {
  name: 'volts',
  quantity: 'voltage',
  domain: sampled(positive, 12, 480),
  help: 'Voltage of the circuit; between lines where it has three phases.',
} as const satisfies Parameter;

/** Never assumed: a driver without correction draws half as much again as its watts say. */
export const powerFactor = {
  name: 'power_factor',
  quantity: 'number',
  domain: sampled(shareAboveZero, 0.4, 1),
  help: 'From the fixture’s plate or sheet; 1 for tungsten only.',
} as const satisfies Parameter;

export const phases = {
  name: 'phases',
  quantity: 'number',
  domain: oneOf(1, 3),
  default: 1,
  help: '1, or 3 for a balanced load on three phases; 1 unless given.',
} as const satisfies Parameter;

export const breaker = {
  name: 'breaker',
  quantity: 'current',
  domain: sampled(positive, 6, 125),
  help: 'What the breaker of the circuit is rated for.',
} as const satisfies Parameter;

export const continuous = {
  name: 'continuous',
  quantity: 'share',
  domain: sampled(shareAboveZero, 0.5, 1),
  fromBook: 'continuousShare',
  help: 'Share of the breaker that may be loaded for hours, a local rule; the book’s unless given.',
} as const satisfies Parameter;

/** Current of a balanced load: line to line voltage times √3 for three phases. */
export function phaseFactor(phases: number): number {
  return phases === 3 ? Math.sqrt(3) : 1;
}
