import type { QuantityName } from '../../../functions/quantities/names.ts';
import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import { writeForPeople } from '../../../functions/quantities/index.ts';
import { writeNumber } from '../../../functions/quantities/writing/number.ts';
import { similarDaylightFrom } from '../../../functions/spectrum/indices.ts';
import { lightOf, through } from '../../../functions/spectrum/light.ts';
import { daylightCurve, planckCurve } from '../../../functions/spectrum/reference.ts';
import { reportOf } from '../../../functions/spectrum/report.ts';
import type { Spectrum } from '../../../functions/spectrum/spectrum.ts';
import { stopsInWords } from '../../../functions/stops/verdictWords.ts';
import { isError, type FunctionError } from '../../../functions/values.ts';
import type { Fact } from '../shown.ts';
import { words } from '../../words/words.ts';

type Maybe<Value> = Value | FunctionError;

const said = words.spectraList;

/** Of a value its text, of what has none a dash. */
const or = <Value>(value: Maybe<Value>, text: (value: Value) => string): string =>
  isError(value) ? said.none : text(value);

/** An index as the standards report it, in whole numbers. */
const whole = (value: number, writing: WritingSettings) => writeNumber(Math.round(value), writing);

/** The figures of the list: colour temperature, tint, Ra, SSI, TLCI; of a filter none. */
export function lineOf(name: string, spectrum: Spectrum, writing: WritingSettings) {
  if (spectrum.measures === 'transmission') return undefined;
  const { nearest, rendering, similarity, consistency } = reportOf(name, lightOf(spectrum));
  const index = (value: Maybe<number>) => or(value, (number) => whole(number, writing));
  return [
    or(nearest, ({ kelvin }) => writeForPeople('colourTemperature', kelvin, writing)),
    or(nearest, ({ duv }) => writeForPeople('duv', duv, writing)),
    or(rendering, ({ general }) => whole(general, writing)),
    index(similarity),
    index(consistency),
  ];
}

/** What a light comes to, behind a filter if there is one, and why where it comes to nothing. */
export function factsOf(
  name: string,
  bare: Spectrum,
  writing: WritingSettings,
  filter?: Spectrum,
): { readonly facts: readonly Fact[]; readonly sentences: readonly string[] } {
  const light = lightOf(filter ? through(bare, filter) : bare);
  if (!(light.tristimulus.Y > 0)) return { facts: [], sentences: [said.nothingThrough] };
  const report = reportOf(name, light);
  const { xy, nearest, rendering, similarity, consistency, peak, lux } = report;
  const write = (quantity: QuantityName, value: number) => writeForPeople(quantity, value, writing);
  const fact = (label: string, text: string): Fact => ({ label, text });
  const index = (label: string, value: Maybe<number>) =>
    fact(
      label,
      or(value, (number) => whole(number, writing)),
    );
  const loss = Math.log2(lightOf(bare).tristimulus.Y / light.tristimulus.Y);
  const facts = [
    fact('x, y', said.both(write('chromaticity', xy.x), write('chromaticity', xy.y))),
    fact(
      said.kelvin,
      or(nearest, ({ kelvin }) => write('colourTemperature', kelvin)),
    ),
    fact(
      said.duv,
      or(nearest, ({ duv }) => said.tint(write('duv', duv), sideOf(duv))),
    ),
    fact(
      said.ra,
      or(rendering, ({ general }) => whole(general, writing)),
    ),
    fact(
      said.r9,
      or(rendering, ({ special }) => whole(special[8] ?? Number.NaN, writing)),
    ),
    index(isError(nearest) ? said.ssi : said.similarTo(reference(nearest.kelvin)), similarity),
    index(said.tlci, consistency),
    fact(said.peak, said.nanometres(writeNumber(peak, writing))),
    ...(lux === undefined ? [] : [fact(said.level, write('illuminance', lux))]),
    ...(filter ? [fact(said.takes, stopsInWords(loss))] : []),
  ];
  const reasons = [nearest, rendering, similarity, consistency].flatMap((value) =>
    isError(value) ? [value.message] : [],
  );
  return { facts, sentences: [...new Set(reasons)] };

  function reference(kelvin: number): string {
    const temperature = write('colourTemperature', kelvin);
    return kelvin < similarDaylightFrom ? said.planck(temperature) : said.daylight(temperature);
  }
}

/** Less than this no eye tells from the locus. */
const none = 0.0005;

const sideOf = (duv: number): 'green' | 'magenta' | 'neither' =>
  Math.abs(duv) < none ? 'neither' : duv > 0 ? 'green' : 'magenta';

const every5 = Float64Array.from({ length: 95 }, (_, index) => 360 + 5 * index);
const shape = (curve: (nm: number) => number): Spectrum => ({
  nanometres: every5,
  values: every5.map(curve),
  measures: 'shape',
});

/** What a filter makes of the two lights that people balance for. */
export function filterFacts(
  name: string,
  filter: Spectrum,
  writing: WritingSettings,
): readonly Fact[] {
  const lights = [
    { label: said.ofTungsten, light: shape(planckCurve(3200)) },
    { label: said.ofDaylight, light: shape(daylightCurve(5600)) },
  ];
  return lights.map(({ label, light }) => {
    const behind = lightOf(through(light, filter));
    if (!(behind.tristimulus.Y > 0)) return { label, text: said.nothingThrough };
    const { nearest } = reportOf(name, behind);
    const loss = Math.log2(lightOf(light).tristimulus.Y / behind.tristimulus.Y);
    const stops = stopsInWords(loss);
    const text = isError(nearest)
      ? said.loses(stops)
      : said.becomes(
          writeForPeople('colourTemperature', nearest.kelvin, writing),
          writeForPeople('duv', nearest.duv, writing),
          stops,
        );
    return { label, text };
  });
}
