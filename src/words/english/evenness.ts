/** How even an area is lit, drawn and in words. */
export const evenness = {
  title: 'Evenness of an area',
  what: 'A grid of readings of a backdrop or screen, each in stops from their mean.',
  values: 'Readings',
  valuesHelp: 'Rows and columns as they lie on the area: lux, f-numbers or luminances of one kind.',
  from: 'Stops are counted from',
  mean: 'the mean, in light',
  highest: 'the highest',
  tooFew: 'At least two readings make an evenness.',
  mixed: 'The readings measure different things, so no mean can be taken.',
  notAboveZero: 'A reading must be above zero to be told in stops.',
  lead: (apart: string, within: string) => `${apart}; ${within}.`,
  apart: (stops: string) => `${stops} from lowest to highest`,
  even: 'The same everywhere',
  allWithin: (tolerance: string) => `all within ${tolerance} of it`,
  within: (inside: number, all: number, tolerance: string) =>
    `${String(inside)} of ${String(all)} within ${tolerance}`,
  ends: (high: string, highAt: string, low: string, lowAt: string) =>
    `Highest ${high} at ${highAt}, lowest ${low} at ${lowAt}.`,
  meanIs: (mean: string, share: string) => `Mean in light ${mean}; the lowest is ${share} of it.`,
  row: (row: number, stops: string) => `Row ${String(row)}: ${stops}.`,
  blank: 'no reading',
  highMark: 'highest',
  lowMark: 'lowest',
  insideMark: (tolerance: string) => `within ${tolerance}`,
  moreMark: 'more',
  lessMark: 'less: the closer the lines, the darker',
} as const;
