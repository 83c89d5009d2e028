import type { Reader } from './parsed.ts';

const pattern = /^(?:#? ?(\d{1,2}(?:\/0)?) ?awg|awg ?#? ?(\d{1,2}(?:\/0)?))$/iu;

const thickest = -3;
const thinnest = 40;

/**
 * Area in mm² of an American wire gauge. ASTM B258: 36 AWG is 0.005 in, 4/0 AWG 0.46 in, and each
 * gauge between them thinner by the 39th root of 92.
 */
export function areaOfGauge(gauge: number): number {
  const diameter = 0.005 * 25.4 * 92 ** ((36 - gauge) / 39);
  return (Math.PI / 4) * diameter ** 2;
}

/** The gauge of an area in mm², not rounded: the inverse of `areaOfGauge`. */
export function gaugeOfArea(area: number): number {
  const diameter = Math.sqrt((4 / Math.PI) * area);
  return 36 - (39 * Math.log(diameter / (0.005 * 25.4))) / Math.log(92);
}

/** "12 AWG", "2/0 AWG": the name of a whole gauge. */
export function gaugeName(gauge: number): string {
  return gauge > 0 ? `${gauge} AWG` : `${1 - gauge}/0 AWG`;
}

/** `12 AWG`, `AWG 12`, `2/0 AWG`. */
export const readGauge: Reader = (text) => {
  const found = pattern.exec(text);
  const written = found?.[1] ?? found?.[2];
  if (written === undefined) return undefined;
  const gauge = written.endsWith('/0') ? 1 - Number.parseInt(written, 10) : Number(written);
  if (gauge < thickest || gauge > thinnest) {
    return { reason: `Wire gauges go from 4/0 to 40 AWG; ${text} is not one.` };
  }
  return { value: areaOfGauge(gauge), unitWritten: true };
};
