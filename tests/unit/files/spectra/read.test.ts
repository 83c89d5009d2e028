import { describe, expect, it } from 'vitest';
import { temperatureOf } from '../../../../functions/colour/temperatureOf.ts';
import { lightOf } from '../../../../functions/spectrum/light.ts';
import { isError } from '../../../../functions/values.ts';
import { readSpectra } from '../../../../src/files/spectra/read.ts';
import { takeSpectra } from '../../../../src/files/spectra/take.ts';
import { sampleSpectra } from '../../../../src/files/spectra/samples.ts';

const lengths = Array.from({ length: 41 }, (_, index) => 380 + 10 * index);
const table = (write: (nm: number) => string) => lengths.map(write).join('\n');

function read(text: string) {
  const file = readSpectra(text);
  if (!file.ok) throw new Error(file.reason);
  return file.spectra;
}

function reasonOf(text: string): string {
  const file = readSpectra(text);
  if (file.ok) throw new Error('It was read.');
  return file.reason;
}

describe('the invented samples, each in another form', () => {
  it.each([
    ['Tungsten 3100', 'shape', 95, 3100],
    ['Phosphor warm', 'shape', 81, 2750],
    ['Phosphor cool', 'irradiance', 201, 5600],
    ['Four-channel mix', 'shape', 401, 3740],
    ['Spiky tube', 'shape', 401, 4150],
    ['Daylight 6200', 'shape', 81, 6200],
    ['Amber gel', 'transmission', 41, undefined],
  ])('%s is %s with %d readings, of %s K', (name, measures, count, kelvin) => {
    const sample = sampleSpectra.find((one) => one.name === name);
    const [only, more] = read(sample?.text ?? '');
    expect(more).toBeUndefined();
    expect(only?.spectrum).toMatchObject({ measures, madeUp: [] });
    expect(only?.spectrum.nanometres).toHaveLength(count);
    if (!only || kelvin === undefined) return;
    const { x, y } = lightOf(only.spectrum).xy;
    const nearest = temperatureOf('', x, y);
    if (isError(nearest)) throw new Error(nearest.message);
    expect(Math.abs(nearest.kelvin / kelvin - 1)).toBeLessThan(0.03);
    expect(Math.abs(nearest.duv)).toBeLessThan(0.013);
  });
});

describe('a table in the common arrangements', () => {
  it.each([
    ['commas', table((nm) => `${nm},${nm / 1000}`)],
    [
      'semicolons and decimal commas',
      table((nm) => `${nm};${String(nm / 1000).replace('.', ',')}`),
    ],
    ['tabs', table((nm) => `${nm}\t${nm / 1000}`)],
    ['blanks and decimal commas', table((nm) => `${nm} ${String(nm / 1000).replace('.', ',')}`)],
    ['units in the cells', table((nm) => `"${nm} nm", ${nm / 1000}`)],
    [
      'remarks above and between',
      `Meter,A 1\nTime,12:00\n\n${table((nm) => `${nm},${nm / 1000}\n# so far`)}`,
    ],
    ['across', `nm,${lengths.join(',')}\nLamp,${lengths.map((nm) => nm / 1000).join(',')}`],
  ])('%s', (_, text) => {
    const [only] = read(text);
    expect([...(only?.spectrum.nanometres ?? [])]).toEqual(lengths);
    expect([...(only?.spectrum.values ?? [])]).toEqual(lengths.map((nm) => nm / 1000));
  });

  it('each further column is a spectrum of its own, under its heading', () => {
    const spectra = read(`nm;Key;Fill\n${table((nm) => `${nm};1;${nm}`)}`);
    expect(spectra.map(({ name }) => name)).toEqual(['Key', 'Fill']);
    expect(spectra[1]?.spectrum.values[0]).toBe(380);
  });

  it('a heading says what is measured: W/m²/nm in its spellings, transmission in percent', () => {
    const first = (heading: string) =>
      read(`${heading}\n${table((nm) => `${nm},50`)}`)[0]?.spectrum;
    expect(first('nm,W/m²/nm')).toMatchObject({ measures: 'irradiance' });
    expect(first('nm,mW/(m2 nm)')?.values[0]).toBeCloseTo(0.05, 12);
    expect(first('nm,W m-2 nm-1')).toMatchObject({ measures: 'irradiance' });
    expect(first('nm,Transmission (%)')).toMatchObject({ measures: 'transmission' });
    expect(first('nm,Transmission (%)')?.values[0]).toBe(0.5);
    expect(first('nm,counts')).toMatchObject({ measures: 'shape' });
  });
});

describe('CGATS.17', () => {
  it('as a list of wavelengths too', () => {
    const rows = table((nm) => `${nm} ${nm / 1000}`);
    const text = `CGATS.17\nBEGIN_DATA_FORMAT\nSPECTRAL_NM SPECTRAL_DEC\nEND_DATA_FORMAT\nBEGIN_DATA\n${rows}\nEND_DATA`;
    expect([...read(text)[0]!.spectrum.nanometres]).toEqual(lengths);
  });

  it('says on which line it breaks off', () => {
    const { text } = sampleSpectra.find(({ file }) => file === 'daylight-6200.txt')!;
    expect(reasonOf(text.replace('END_DATA\n', ''))).toContain('BEGIN_DATA is never ended');
    expect(reasonOf(text.replace(/ 0\.\d+/, ' dark'))).toMatch(/^Line 9: “dark” is no number/);
  });
});

describe('what is made up is said, and what cannot be is refused with the line', () => {
  it('a range that is short, a gap and noise about zero', () => {
    const rows = lengths
      .filter((nm) => nm >= 400 && nm <= 720 && nm !== 550)
      .map((nm) => `${nm},${nm === 420 ? -0.001 : 1}`);
    expect(read(rows.join('\n'))[0]?.notes).toEqual([
      'From 380 to 400 nm nothing was read: the first reading stands for it.',
      'The gap from 540 to 560 nm is bridged by a straight line.',
      'From 720 to 780 nm nothing was read: the last reading stands for it.',
      'Values a little below zero between 420 and 420 nm count as nothing.',
    ]);
  });

  it.each([
    ['a gap', table((nm) => (nm > 500 && nm < 540 ? '' : `${nm},1`)), 17, 'between 500 and 540 nm'],
    ['too short', table((nm) => (nm > 640 ? '' : `${nm},1`)), 27, 'It ends at 640 nm'],
    ['wrong order', table((nm) => `${nm === 500 ? 480 : nm},1`), 13, '480 nm comes after 490 nm'],
    ['below zero', table((nm) => `${nm},${nm === 500 ? -1 : 1}`), 13, 'not -1'],
    ['no number', table((nm) => `${nm},${nm === 500 ? 'dark' : 1}`), 13, '“dark” is no number'],
    [
      'a missing value',
      table((nm) => (nm === 500 ? '500,' : `${nm},1`)),
      13,
      'Here a value is missing',
    ],
    ['micrometres', table((nm) => `${nm / 1000},1`), 1, 'in nanometres, not 0.38'],
    ['a filter that adds light', `nm,transmission\n${table((nm) => `${nm},2`)}`, 2, 'from 0 to 1'],
    ['no light', table((nm) => `${nm},0`), 41, 'gives nothing'],
    ['no table', 'Dear all,\nsee you at six.', 2, 'no table of wavelengths'],
    ['other XML', '<svg><path/></svg>', 1, 'no spectrum of TM-27'],
  ])('%s', (_, text, line, sentence) => {
    expect(reasonOf(text)).toContain(sentence);
    expect(reasonOf(text)).toMatch(new RegExp(`^Line ${line}: .*Nothing was taken\\.$`, 's'));
  });
});

it('goes to the shelf under its heading, else under the name of the file', () => {
  const content = new TextEncoder().encode(table((nm) => `${nm},1`));
  const taken = takeSpectra({ name: 'walks/Ice house.csv', content });
  if (!taken.ok) throw new Error(taken.reason);
  expect(taken.spectra).toEqual([
    {
      name: 'Ice house',
      kind: 'shape',
      nm: lengths,
      values: lengths.map(() => 1),
      file: 'walks/Ice house.csv',
    },
  ]);
});
