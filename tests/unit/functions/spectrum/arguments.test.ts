import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/call.ts';
import SPECTRUMCRI from '../../../../functions/colour/SPECTRUMCRI.ts';
import SPECTRUMSSI from '../../../../functions/colour/SPECTRUMSSI.ts';
import SPECTRUMTLCI from '../../../../functions/colour/SPECTRUMTLCI.ts';
import SPECTRUMX from '../../../../functions/colour/SPECTRUMX.ts';
import type { AnyDefinition } from '../../../../functions/define.ts';
import { spectraFrom } from '../../../../functions/spectrum/spectra.ts';
import { remarkOn } from '../../../../functions/spectrum/parameters.ts';
import { planckCurve } from '../../../../functions/spectrum/reference.ts';
import type { MadeUp, Spectrum } from '../../../../functions/spectrum/spectrum.ts';
import { isError, type Argument } from '../../../../functions/values.ts';
import { settings } from '../support/settings.ts';

const lengths = Float64Array.from({ length: 81 }, (_, index) => 380 + 5 * index);
const made = (power: (nm: number) => number, madeUp?: readonly MadeUp[]): Spectrum => ({
  ...{ nanometres: lengths, values: lengths.map(power), measures: 'shape' },
  ...(madeUp && { madeUp }),
});

const spectra = spectraFrom({
  White: made(() => 1),
  Blue: made(planckCurve(40_000)),
  Red: made((nm) => (nm === 605 ? 1 : nm === 610 ? 0.1 : 0)),
  Shut: { ...made(() => 0), measures: 'transmission' },
  Green: made((nm) => (nm === 505 ? 1 : 0)),
  Short: made(() => 1, [{ kind: 'above', from: 730, to: 780 }]),
  '3200 K': made(() => 1),
});
const refusal = (definition: AnyDefinition, ...args: readonly Argument[]) => {
  const result = call(definition, args, { ...settings, spectra });
  return isError(result) ? result.message : result;
};

describe('a light that has no answer is refused with a sentence', () => {
  it('where nothing comes through the filter', () => {
    expect(refusal(SPECTRUMX, 'White', 'Shut')).toBe(
      'SPECTRUMX: nothing comes through the filter.',
    );
  });

  it.each([SPECTRUMCRI, SPECTRUMSSI, SPECTRUMTLCI] as readonly AnyDefinition[])(
    'bluer than any daylight: $name',
    (definition) => {
      expect(refusal(definition, 'Blue')).toMatch(
        new RegExp(`^${definition.name}: at \\d{5,} K there is no reference; daylight is stated`),
      );
    },
  );

  it('so red that the camera clips all it lights', () => {
    expect(refusal(SPECTRUMTLCI, 'Red')).toBe(
      'SPECTRUMTLCI: under this light the camera clips every colour of the chart.',
    );
  });

  it('that has no colour temperature', () => {
    expect(refusal(SPECTRUMSSI, 'Green')).toMatch(/^SPECTRUMSSI: .*\.$/);
    expect(refusal(SPECTRUMTLCI, 'Green')).toMatch(/^SPECTRUMTLCI: .*\.$/);
  });
});

describe('a reference', () => {
  it('is a spectrum of the book even where its name could be a temperature', () => {
    expect(refusal(SPECTRUMSSI, 'White', '3200 K')).toBeCloseTo(100, 9);
    expect(refusal(SPECTRUMSSI, 'White', '3201 K')).toBeLessThan(90);
  });
});

describe('a remark on a spectrum', () => {
  const named = (name: string) => remarkOn(spectra, [[{ value: name }]]);

  it('says what was made up, of one that was kept and of one in cells', () => {
    const sentence = 'Above 730 nm nothing was read, so the last reading stands for it up to 780.';
    expect(named('Short')).toBe(sentence);
    const rows = Array.from(lengths.subarray(0, 71), (nm) => [{ value: nm }, { value: 1 }]);
    expect(remarkOn(spectra, rows)).toBe(sentence);
  });

  it('is none where nothing was, or where there is no spectrum', () => {
    expect(named('White')).toBeUndefined();
    expect(named('No such')).toBeUndefined();
  });
});
