import { describe, expect, it } from 'vitest';
import { call, readArguments } from '../../../functions/call.ts';
import { byName } from '../../../functions/index.ts';
import { near } from '../../../functions/near.ts';
import { isError } from '../../../functions/values.ts';
import { chance, seed } from './support/chance.ts';
import { sampleFor } from './support/samples.ts';
import { settings } from './support/settings.ts';

const trials = 200;
/** Two closed forms after each other, each exact to 1e-12 of its value. */
const share = 1e-11;

type Numbers = readonly number[];

interface Pair {
  readonly there: string;
  readonly back: string;
  /** Arguments of the way back, from the result and the arguments of the way there. */
  readonly from: (result: number, given: Numbers) => readonly (number | undefined)[];
  /** Which argument of the way there comes back. */
  readonly restores: number;
}

const only = (result: number) => [result];
const withRest = (result: number, [, ...rest]: Numbers) => [result, ...rest];

/** A way there and its way back; the first argument is restored unless another is named. */
function pair(there: string, back: string, from: Pair['from'] = withRest, restores = 0): Pair {
  return { there, back, from, restores };
}

const pairs: readonly Pair[] = [
  pair('STOPFACTOR', 'FACTORSTOPS', only),
  pair('FACTORSTOPS', 'STOPFACTOR', only),
  pair('STOPS', 'LEVELAT', (stops, [, reference]) => [reference, stops]),
  pair('LEVELAT', 'STOPS', (level, [reference]) => [level, reference], 1),
  pair('FSTOPS', 'FNUMBERAT', (stops, [, reference]) => [reference, stops]),
  pair('FNUMBERAT', 'FSTOPS', (reading, [reference]) => [reading, reference], 1),
  pair('CONTRASTRATIO', 'FILLFOR', (ratio, [keySide]) => [keySide, ratio], 1),
  pair('FCONTRASTRATIO', 'FFILLFOR', (ratio, [keySide]) => [keySide, ratio], 1),
  pair('EVLUX', 'LUXEV'),
  pair('LUXEV', 'EVLUX'),
  pair('EVLUMINANCE', 'LUMINANCEEV'),
  pair('LUMINANCEEV', 'EVLUMINANCE'),
  pair('INCIDENTF', 'INCIDENTLUX'),
  pair('INCIDENTLUX', 'INCIDENTF'),
  pair('INCIDENTTIME', 'INCIDENTLUX', (time, [, iso, stop, c]) => [stop, iso, time, c]),
  pair('INCIDENTISO', 'INCIDENTLUX', (iso, [, stop, time, c]) => [stop, iso, time, c]),
  pair('SPOTF', 'SPOTLUMINANCE'),
  pair('SPOTLUMINANCE', 'SPOTF'),
  pair('SPOTTIME', 'SPOTLUMINANCE', (time, [, iso, stop, k]) => [stop, iso, time, k]),
  pair('SPOTISO', 'SPOTLUMINANCE', (iso, [, stop, time, k]) => [stop, iso, time, k]),
  pair('SHUTTERTIME', 'SHUTTERANGLE'),
  pair('SHUTTERANGLE', 'SHUTTERTIME'),
  pair('LUMINANCEOF', 'REFLECTANCEOF', (luminance, [lux]) => [luminance, lux], 1),
  pair('INVERSESQUARE', 'INVERSESQUARE', (lux, [, near, far]) => [lux, far, near]),
  pair('DISTANCEFOR', 'INVERSESQUARE', (far, [lux, near]) => [lux, near, far], 2),
  pair('CANDELALUX', 'LUXCANDELA'),
  pair('LUXCANDELA', 'CANDELALUX'),
  pair('BEAMDIAMETER', 'BEAMANGLE', (diameter, [distance]) => [diameter, distance], 1),
  pair('BEAMDIAMETER', 'BEAMDISTANCE', (diameter, [, angle]) => [diameter, angle]),
  pair('SOURCEANGLE', 'SOURCESIZE'),
  pair('SOURCESIZE', 'SOURCEANGLE'),
  pair('PANELLUMINANCE', 'PANELLUX'),
  pair('FOOTCANDLES', 'LUX', only),
  pair('LUX', 'FOOTCANDLES', only),
  pair('FOOTLAMBERTS', 'NITS', only),
  pair('NITS', 'FOOTLAMBERTS', only),
  pair('DENSITYSTOPS', 'STOPSDENSITY', only),
  pair('STOPSDENSITY', 'DENSITYSTOPS', only),
  pair('TRANSMISSIONSTOPS', 'STOPSTRANSMISSION', only),
  pair('STOPSTRANSMISSION', 'TRANSMISSIONSTOPS', only),
  pair('DENSITYTRANSMISSION', 'TRANSMISSIONDENSITY', only),
  pair('TRANSMISSIONDENSITY', 'DENSITYTRANSMISSION', only),
  pair('MIRED', 'KELVIN', only),
  pair('KELVIN', 'MIRED', only),
  pair('AMPS', 'WATTS'),
  pair('WATTS', 'AMPS'),
  pair('ENERGY', 'BATTERYHOURS', (energy, [watts]) => [energy, watts, 1], 1),
  pair('MIREDSHIFT', 'KELVINTHROUGH', (shift, [from]) => [from, shift], 1),
];

function numberFrom(name: string, args: readonly (number | undefined)[]): number | undefined {
  const definition = byName.get(name);
  if (!definition) throw new Error(`There is no ${name}`);
  const result = call(definition, args, settings);
  if (isError(result)) return undefined;
  if (typeof result !== 'number') throw new Error(`${name} gave ${result}`);
  return result;
}

describe(`there and back again (SEED=${seed})`, () => {
  it.each(pairs)('$there, then $back', ({ there, back, from, restores }) => {
    const next = chance(seed);
    const definition = byName.get(there);
    if (!definition) throw new Error(`There is no ${there}`);
    let returned = 0;
    for (let trial = 0; trial < trials; trial += 1) {
      // A sample that happens to be an engraved mark means its exact value.
      const given = readArguments(definition, sampleFor(definition, next) as number[], settings);
      if (isError(given)) throw new Error(given.message);
      const handed = given as readonly number[];
      const result = numberFrom(there, handed);
      // Out of reach: an exposure longer than its frame, light from behind, nothing at all.
      if (result === undefined || result === 0) continue;
      const restored = numberFrom(back, from(result, handed));
      if (restored === undefined) continue;
      returned += 1;
      const wanted = handed[restores] ?? NaN;
      expect(near(restored, wanted, share), `${restored} for ${handed.join(', ')}`).toBe(true);
    }
    expect(returned).toBeGreaterThan(trials / 4);
  });
});
