import { grace } from '../stops/verdictWords.ts';

/**
 * How far off a colour may be and still agree where nobody says. Common practice: 10 mired is less
 * than the weakest correction shifts, and 0.003 is half of what ANSI C78.377 lets the Duv of a lamp
 * be off (quoted from memory).
 */
export const usualTolerance = { mired: 10, duv: 0.003 } as const;

/** Which way along the locus, in words: "92 mired too warm". */
export const miredInWords = (mired: number): string =>
  `${rounded(Math.abs(mired))} mired too ${mired > 0 ? 'warm' : 'blue'}`;

/** Which way across it: "green by 0.005". */
export const duvInWords = (duv: number): string =>
  `${duv > 0 ? 'green' : 'magenta'} by ${Math.abs(duv).toFixed(Math.abs(duv) < 0.001 ? 4 : 3)}`;

const rounded = (size: number): string =>
  size >= 0.5 ? String(Math.round(size)) : size.toPrecision(1);

/** Both in words: "92 mired too warm, green by 0.005", or "agrees". */
export function colourVerdict(
  mired: number,
  duv: number,
  miredTolerance: number,
  duvTolerance: number,
): string {
  const said = [
    ...(Math.abs(mired) > miredTolerance + grace ? [miredInWords(mired)] : []),
    ...(Math.abs(duv) > duvTolerance + grace ? [duvInWords(duv)] : []),
  ];
  return said.join(', ') || 'agrees';
}
