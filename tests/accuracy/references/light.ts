import PANELLUX from '../../../functions/distance/PANELLUX.ts';
import type { Measured } from '../../../functions/values.ts';
import { Exact, workOutExactly, type Exact as Digits } from '../decimal.ts';
import type { References } from '../measure.ts';

const digits = { against: 'its equation with fifty digits', limit: 1e-12 };

type Metered = readonly [Measured, string, number, number, number, number, number];

/** N² by ISO 2720: E · S · t / C, or L · S · t / K; an exposure value is of ISO 100. */
function squared([reading, meter, iso, time, dome, flat, spot]: Metered): Digits {
  const value = new Exact(reading.value);
  const settings = new Exact(iso).times(time);
  if (reading.measured === 'fNumber') return value.times(value);
  if (reading.measured === 'luminance') return value.times(settings).div(spot);
  if (reading.measured === 'ev') return new Exact(2).pow(value).times(settings).div(100);
  return value.times(settings).div(constant(meter, dome, flat));
}

const constant = (meter: string, dome: number, flat: number) => (meter === 'dome' ? dome : flat);

/** IEC 60228, tables 2 and 3, plain copper at 20 °C: ohm a kilometre by section in mm² (from memory). */
const fixedWiring = table(
  '0.5 36 0.75 24.5 1 18.1 1.5 12.1 2.5 7.41 4 4.61 6 3.08 10 1.83 16 1.15 25 0.727 35 0.524 50 0.387',
  '70 0.268 95 0.193 120 0.153 150 0.124 185 0.0991 240 0.0754 300 0.0601 400 0.047 500 0.0366 630 0.0283',
);
const flexible = table(
  '0.5 39 0.75 26 1 19.5 1.5 13.3 2.5 7.98 4 4.95 6 3.3 10 1.91 16 1.21 25 0.78 35 0.554 50 0.386',
  '70 0.272 95 0.206 120 0.161 150 0.129 185 0.106 240 0.0801 300 0.0641 400 0.0486 500 0.0384 630 0.0287',
);

function table(...lines: readonly string[]): ReadonlyMap<number, number> {
  const numbers = lines.join(' ').split(' ').map(Number);
  return new Map(
    numbers.flatMap((section, index) =>
      index % 2 === 0 ? [[section, numbers[index + 1] ?? NaN] as const] : [],
    ),
  );
}

export const light: References = {
  EXPOSURETIME: {
    ...digits,
    work: ([shutter, fps]: readonly [Measured, number]) =>
      shutter.measured === 'angle'
        ? new Exact(shutter.value).div(360).div(fps)
        : new Exact(shutter.value),
  },
  READINGF: { ...digits, work: (metered: Metered) => squared(metered).sqrt() },
  READINGLUX: {
    ...digits,
    work: (metered: Metered) => {
      const [reading, meter, iso, time, dome, flat] = metered;
      if (reading.measured === 'illuminance') return new Exact(reading.value);
      return squared(metered)
        .times(constant(meter, dome, flat))
        .div(new Exact(iso).times(time));
    },
  },
  PANELDISTANCE: {
    against: 'halving on the rectangle’s equation with fifty digits',
    limit: 1e-9,
    oneIn: 50,
    work: ([luminance, width, height, wanted]: readonly number[]) => {
      let [near, far] = [new Exact(0), new Exact(1_000_000)];
      for (let turn = 0; turn < 100; turn += 1) {
        const middle = near.plus(far).div(2);
        const lux = workOutExactly(PANELLUX, [luminance, width, height, middle]);
        if (lux instanceof Exact && lux.gt(wanted ?? NaN)) near = middle;
        else far = middle;
      }
      return near;
    },
  },
  VOLTDROP: {
    against: 'the standard’s table, copied from print',
    limit: 1e-12,
    work: ([amps = 0, length = 0, area = 0, temperature = 0, conductors]: readonly number[]) => {
      const ohms = (conductors === 2 ? fixedWiring : flexible).get(area) ?? NaN;
      // Copper: resistance in proportion to the temperature above −230 °C, 1 at 20 °C.
      const warm = new Exact(230).plus(temperature).div(250);
      return warm.times(ohms).times(amps).times(length).times(2).div(1000);
    },
  },
};
