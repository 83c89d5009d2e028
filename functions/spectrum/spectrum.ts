/**
 * What the values are: power of which only the shape counts, irradiance in W/(m²·nm) where the light
 * arrives, or the share that a filter lets through.
 */
export type Measures = 'shape' | 'irradiance' | 'transmission';

/** Power, or a filter’s transmission, by wavelength as it was read: a curve of straight lines. */
export interface Spectrum {
  /** Rising, in nanometres. */
  readonly nanometres: Float64Array;
  readonly values: Float64Array;
  readonly measures: Measures;
  /** What was made up where nothing was read; none unless it is said. */
  readonly madeUp?: readonly MadeUp[];
}

/** From here to there, in nanometres; `noise` is less than nothing, taken as none. */
export interface MadeUp {
  readonly kind: 'below' | 'above' | 'gap' | 'noise';
  readonly from: number;
  readonly to: number;
}

/** What every figure is summed over, in nanometres: CIE 13.3 and the tables of CIE 15. */
export const shortest = 380;
export const longest = 780;

/** A reading every this many nanometres, as the middle one of all steps. */
export function stepOf({ nanometres }: Spectrum): number {
  const steps = Array.from(nanometres.subarray(1), (nm, index) => nm - nanometres[index]!);
  return steps.sort((one, other) => one - other)[steps.length >> 1] ?? 0;
}

/**
 * The curve at any wavelength: straight between readings (which never makes light where none was
 * read), the mean about each whole nanometre where they are closer than that, so that no line falls
 * between. From 380 to 780 nm a missing end is taken as the last reading (CIE 15:2004, 7.2.3, clause
 * from memory); beyond that there is nothing.
 */
export function curveOf(spectrum: Spectrum): (nm: number) => number {
  const { nanometres, values } = spectrum;
  const last = nanometres.length - 1;
  const first = nanometres[0]!;
  const end = nanometres[last]!;
  const [low, high] = [Math.min(first, shortest), Math.max(end, longest)];
  const dense = stepOf(spectrum) < 1 - 1e-6;
  let at = 0;

  return (nm) => {
    if (nm < low || nm > high) return 0;
    if (nm <= first) return values[0]!;
    if (nm >= end) return values[last]!;
    if (nm < nanometres[at]!) at = 0;
    while (nanometres[at + 1]! < nm) at += 1;
    return (dense ? meanAbout(spectrum, nm, at) : undefined) ?? between(spectrum, nm, at);
  };
}

function between({ nanometres, values }: Spectrum, nm: number, at: number): number {
  const [from, to] = [nanometres[at]!, nanometres[at + 1]!];
  const share = (nm - from) / (to - from);
  return values[at]! * (1 - share) + values[at + 1]! * share;
}

/** Readings less than a nanometre off, each by how near it is and how much room it has. */
function meanAbout({ nanometres, values }: Spectrum, nm: number, at: number): number | undefined {
  let [sum, weights] = [0, 0];
  let index = at;
  while (index > 0 && nanometres[index - 1]! > nm - 1) index -= 1;
  for (; index < nanometres.length && nanometres[index]! < nm + 1; index += 1) {
    const before = nanometres[index - 1] ?? nanometres[index]!;
    const after = nanometres[index + 1] ?? nanometres[index]!;
    const weight = Math.max(0, 1 - Math.abs(nanometres[index]! - nm)) * (after - before);
    sum += weight * values[index]!;
    weights += weight;
  }
  return weights > 0 ? sum / weights : undefined;
}
