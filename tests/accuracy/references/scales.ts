import type { Chance, References } from '../measure.ts';

/** Engraved names as lenses have them (ISO 517 for whole stops and thirds, the rest common practice; from memory). */
const engraved: Readonly<Record<number, string>> = {
  1: '0.7 1 1.4 2 2.8 4 5.6 8 11 16 22 32 45 64',
  2: '0.7 0.8 1 1.2 1.4 1.7 2 2.4 2.8 3.3 4 4.8 5.6 6.7 8 9.5 11 13 16 19 22 27 32 38 45 54 64',
  3: '0.7 0.8 0.9 1 1.1 1.2 1.4 1.6 1.8 2 2.2 2.5 2.8 3.2 3.5 4 4.5 5 5.6 6.3 7.1 8 9 10 11 13 14 16 18 20 22 25 29 32 36 40 45 51 57 64',
};

const namesOf = (parts: number) => (engraved[parts] ?? '').split(' ').map(Number);
const exactOf = (step: number, parts: number) => 2 ** ((step / parts - 1) / 2);

/** The step whose exact value is nearest in stops: all are tried. */
function nearest(fNumber: number, parts: number): number {
  const away = namesOf(parts).map((_, step) => Math.abs(Math.log2(fNumber / exactOf(step, parts))));
  return away.indexOf(Math.min(...away));
}

const onALens = (chance: Chance) => 0.7 * 64 ** chance();
const anyParts = (chance: Chance) => 1 + Math.floor(3 * chance());

/** A mark of one of the scales, as its exact value: so it arrives. */
function anyMark(chance: Chance): number {
  const parts = anyParts(chance);
  return exactOf(Math.floor(chance() * namesOf(parts).length), parts);
}

const against = 'the engraved names, each tried';

export const scales: References = {
  FMARK: {
    against,
    limit: 0,
    unit: 'f-number',
    sample: (chance) => [onALens(chance), anyParts(chance)],
    work: ([fNumber, parts]: readonly number[]) =>
      namesOf(parts ?? 3)[nearest(fNumber ?? 0, parts ?? 3)],
  },
  FEXACT: {
    against,
    limit: 1e-12,
    sample: (chance) => [anyMark(chance), anyParts(chance)],
    work: ([mark = 0, parts = 3]: readonly number[]) => {
      // The name under which the value is engraved on any scale, read on the scale asked for.
      const name = [1, 2, 3]
        .map((scale) => [
          exactOf(nearest(mark, scale), scale),
          namesOf(scale)[nearest(mark, scale)],
        ])
        .find(([exact = 0]) => Math.abs(exact - mark) < 1e-9)?.[1];
      const step = namesOf(parts).indexOf(name ?? 0);
      return step < 0 ? mark : exactOf(step, parts);
    },
  },
  FTENTHS: {
    against,
    limit: 0,
    sample: (chance) => [onALens(chance)],
    work: ([fNumber = 0]: readonly number[]) => {
      const tenths = Array.from({ length: 130 }, (_, index) => index);
      const away = tenths.map((step) => Math.abs(Math.log2(fNumber / exactOf(step, 10))));
      const step = away.indexOf(Math.min(...away));
      const whole = `f/${String(namesOf(1)[Math.floor(step / 10)])}`;
      return step % 10 === 0 ? whole : `${whole} + 0.${String(step % 10)}`;
    },
  },
};
