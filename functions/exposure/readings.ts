import { refuse, type FunctionError, type Measured } from '../values.ts';

/** How a meter was set up and what it is calibrated to. */
export interface Metered {
  readonly meter: string;
  readonly iso: number;
  readonly time: number;
  readonly dome: number;
  readonly flat: number;
  readonly spot: number;
}

const receptors = ['dome', 'flat'] as const;

/** Incident constant C of the receptor named, or the sentence why that is none. */
export function incidentConstant({ meter, dome, flat }: Metered): number | FunctionError {
  const receptor = receptors.find((name) => name === meter.trim().toLowerCase());
  if (!receptor) {
    return refuse(`An incident reading is taken with a dome or a flat receptor, not "${meter}".`);
  }
  return { dome, flat }[receptor];
}

/** The f-number that a reading of any kind means at this speed and time (ISO 2720). */
export function readingAsFNumber(reading: Measured, metered: Metered): number | FunctionError {
  const { iso, time, spot } = metered;
  if (reading.measured === 'fNumber') return reading.value;
  if (reading.measured === 'luminance') return Math.sqrt((reading.value * iso * time) / spot);
  if (reading.measured === 'ev') return Math.sqrt(2 ** reading.value * time * (iso / 100));
  const constant = incidentConstant(metered);
  return typeof constant === 'number'
    ? Math.sqrt((reading.value * iso * time) / constant)
    : constant;
}

/** The illuminance behind an incident reading at this speed and time (ISO 2720). */
export function readingAsLux(reading: Measured, metered: Metered): number | FunctionError {
  if (reading.measured === 'illuminance') return reading.value;
  if (reading.measured === 'luminance') {
    return refuse('A spot reading is light that left a surface; it does not say what falls on it.');
  }
  const fNumber = readingAsFNumber(reading, metered);
  const constant = incidentConstant(metered);
  if (typeof fNumber !== 'number' || typeof constant !== 'number') return constant;
  return (constant * fNumber ** 2) / (metered.iso * metered.time);
}
