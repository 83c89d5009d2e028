import { colourVerdict } from '../../../../functions/colour/colourWords.ts';
import { words } from '../../../words/words.ts';
import type { Surroundings } from '../../figure.ts';
import { said, saidNumber } from '../../kit/words.ts';
import type { Colour, Colours } from './read.ts';

const sayings = words.chromaticity;

/** `3250 K, Duv −0.0010`, or x and y where it has no colour temperature. */
export function colourSaid({ at, tinted }: Colour, writing: Surroundings['writing']): string {
  if (!tinted) {
    const digits = (value: number) => saidNumber('chromaticity', value, writing, { decimals: 3 });
    return sayings.noKelvin(digits(at.x), digits(at.y));
  }
  const kelvin = said('colourTemperature', tinted.kelvin, writing, { decimals: 0 });
  return sayings.colour(kelvin, said('duv', tinted.duv, writing, { decimals: 3 }));
}

/** How far a colour is off the white, in words; none where either has no colour temperature. */
export function offWhite(colour: Colour, { white, tolerance }: Colours): string | undefined {
  const [is, wanted] = [colour.tinted, white?.tinted];
  if (!is || !wanted) return undefined;
  const mired = 1e6 / is.kelvin - 1e6 / wanted.kelvin;
  return colourVerdict(mired, is.duv - wanted.duv, tolerance.mired, tolerance.duv);
}

export function describeColours(colours: Colours, { writing }: Surroundings): readonly string[] {
  const { sources, white } = colours;
  const agree = sources.filter((source) => offWhite(source, colours) === 'agrees').length;
  return [
    white
      ? sayings.agree(agree, sources.length, colourSaid(white, writing))
      : sayings.count(sources.length),
    ...sources.map((source) => {
      const is = offWhite(source, colours);
      const then = source.then && offWhite(source.then, colours);
      const colour = colourSaid(source, writing);
      if (is === undefined) return sayings.alone(source.name, colour);
      const verdict = then === undefined ? is : sayings.corrected(is, then);
      return sayings.source(source.name, colour, verdict);
    }),
    sayings.tinted,
  ];
}
