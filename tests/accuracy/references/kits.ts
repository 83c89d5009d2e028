import type { References } from '../measure.ts';

const usualKit = [0.3, 0.6, 0.9, 1.2, 1.5, 1.8, 2.1];

/** The strongest label, in nominal stops (0.3 each), that does not pass what must go. */
function strongest(stops: number, labels: readonly number[]): number {
  const fitting = labels.map((label) => label / 0.3).filter((nominal) => nominal <= stops + 1e-9);
  return fitting.sort((one, other) => other - one)[0] ?? 0;
}

/** Kits of labels that are printed: whole and half stops. */
const kit = (chance: () => number) =>
  Array.from(
    { length: 1 + Math.floor(5 * chance()) },
    () => 0.15 * (1 + Math.floor(20 * chance())),
  );

const sample = (chance: () => number) => [10 * chance(), chance() < 0.3 ? undefined : kit(chance)];
type Asked = readonly [number, readonly number[] | undefined];

/** The fewest circuits, found by trying every way to put the fixtures on them. */
function fewest(amps: readonly number[], capacity: number): number {
  function place(index: number, circuits: readonly number[]): number {
    const load = amps[index];
    if (load === undefined) return circuits.length;
    const further = circuits.flatMap((used, at) =>
      used + load <= capacity * (1 + 1e-9)
        ? [place(index + 1, circuits.with(at, used + load))]
        : [],
    );
    return Math.min(place(index + 1, [...circuits, load]), ...further);
  }
  return place(0, []);
}

type Circuits = readonly [readonly number[], number, number, readonly number[], number];

export const kits: References = {
  NDFOR: {
    against: 'the kit, each label tried',
    limit: 0,
    sample,
    work: ([stops, labels = usualKit]: Asked) => {
      const label = strongest(stops, labels) * 0.3;
      const hundredths = String(Number(label.toFixed(2)));
      if (label === 0) return 'none';
      return `ND ${/^\d+$/.test(hundredths) ? `${hundredths}.0` : hundredths}`;
    },
  },
  NDREST: {
    against: 'the kit, each label tried',
    limit: 1e-12,
    sample,
    work: ([stops, labels = usualKit]: Asked) => stops - strongest(stops, labels),
  },
  CIRCUITSFOR: {
    against: 'every way to distribute up to seven fixtures',
    limit: 0,
    oneIn: 5,
    sample: (chance) => [
      Array.from({ length: 1 + Math.floor(7 * chance()) }, () => 100 + 2400 * chance()),
      ...[230, 16, [1], 0.8],
    ],
    work: ([loads, volts, breaker, factors, continuous]: Circuits) =>
      fewest(
        loads.map((watts) => watts / (volts * (factors[0] ?? NaN))),
        breaker * continuous,
      ),
  },
};
