import type { Surroundings } from '../../figure.ts';
import { said, saidNumber } from '../../kit/words.ts';
import type { Polar, Wide } from './read.ts';
import { words } from '../../../words/words.ts';

export function describePolar(polar: Polar, { writing }: Surroundings): readonly string[] {
  const { name, peak, beam, field, lumens, watts } = polar;
  const three = (value: number) => Number(value.toPrecision(3));
  const angle = (degrees: number | undefined) =>
    degrees === undefined ? words.polar.noEdge : said('angle', rounded(degrees), writing);
  const both = ({ level, upright }: Wide) =>
    angle(level) === angle(upright)
      ? angle(level)
      : words.polar.across(angle(level), angle(upright));
  const flux = said('flux', three(lumens), writing);
  return [
    words.polar.lead(name, said('intensity', three(peak), writing)),
    words.polar.edges(both(beam), both(field)),
    watts === undefined
      ? words.polar.lumens(flux)
      : words.polar.perWatt(
          flux,
          said('power', watts, writing),
          saidNumber('number', three(lumens / watts), writing),
        ),
    words.polar.clean,
  ];
}

/** Half a degree is as near as anyone reads a beam. */
export const rounded = (degrees: number): number => Math.round(degrees * 2) / 2;
