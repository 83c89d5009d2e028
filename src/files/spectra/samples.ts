import { daylightCurve, planckCurve } from '../../../functions/spectrum/reference.ts';
import { bell } from '../../../functions/spectrum/exampleSpectra.ts';

/**
 * Invented spectra of honest shapes, each from Planck’s law, the daylight of CIE 15 or bells that are
 * stated here. No lamp of this make exists: the files show what such lights are like, and what the
 * readers read: each is written in another of the forms.
 */
export interface SampleSpectrum {
  readonly file: string;
  readonly name: string;
  readonly text: string;
}

const maker = 'Harbour Hours sample spectra (invented)';
type Curve = (nm: number) => number;

const sum =
  (...parts: readonly (readonly [share: number, curve: Curve])[]): Curve =>
  (nm) =>
    parts.reduce((total, [share, curve]) => total + share * curve(nm), 0);
const steps = (from: number, to: number, step: number) =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step);
const digits = (value: number) => String(Number(value.toPrecision(5)));

/** So that the highest reading is 1. */
function readings(curve: Curve, at: readonly number[]) {
  const powers = at.map(curve);
  const most = Math.max(...powers);
  return at.map((nm, index) => [nm, powers[index]! / most] as const);
}

/** A blue emitter of 25 nm that a phosphor lets through, and the phosphor: two bells for its skew. */
const phosphorWhite = (blue: number, middle: number, width: number) =>
  sum([blue, bell(452, 25)], [1, bell(middle, width)], [0.35, bell(middle + 60, width)]);

const tungsten = planckCurve(3100);
const warm = phosphorWhite(0.46, 588, 118);
const cool = phosphorWhite(1.75, 553, 122);
const four = sum(
  [0.9, bell(455, 22)],
  [0.55, bell(525, 34)],
  [1, bell(632, 18)],
  [0.75, phosphorWhite(0.3, 580, 120)],
);
// Lines where mercury and three rare earths have theirs, over a little continuous light.
const tube = sum(
  ...([404.7, 435.8, 487, 542, 546.1, 577, 585, 611, 630, 707] as const).map(
    (nm, index) => [[12, 38, 20, 40, 80, 14, 24, 100, 18, 6][index]! / 100, bell(nm, 3)] as const,
  ),
  [0.03, bell(520, 260)],
);
const daylight = daylightCurve(6200);

/** Comma, every 5 nm. */
function commas(curve: Curve): string {
  const rows = readings(curve, steps(380, 780, 5));
  const lines = rows.map(([nm, power]) => `${String(nm)},${digits(power)}`);
  return [`# ${maker}`, 'wavelength (nm),relative power', ...lines, ''].join('\n');
}

/** Semicolon and decimal comma, every 2 nm, in W/(m²·nm) as a meter at 1 m would say. */
function semicolons(curve: Curve, watts: number): string {
  const rows = readings(curve, steps(380, 780, 2)).map(
    ([nm, power]) => `${String(nm)};${digits(power * watts).replace('.', ',')}`,
  );
  return [maker, 'nm;W/m²/nm', ...rows].join('\r\n') + '\r\n';
}

/** Tabs, every nanometre. */
function tabs(curve: Curve): string {
  const rows = readings(curve, steps(380, 780, 1));
  return [
    maker,
    'nm\tpower',
    ...rows.map(([nm, power]) => `${String(nm)}\t${digits(power)}`),
    '',
  ].join('\n');
}

/** CGATS.17: a field for each band of 5 nm. */
function cgats(name: string, curve: Curve): string {
  const rows = readings(curve, steps(380, 780, 5));
  return [
    ...['CGATS.17', `ORIGINATOR "${maker}"`, `NUMBER_OF_FIELDS ${String(rows.length + 1)}`],
    ...[
      'BEGIN_DATA_FORMAT',
      ['SAMPLE_NAME', ...rows.map(([nm]) => `SPEC_${String(nm)}`)].join(' '),
    ],
    ...['END_DATA_FORMAT', 'NUMBER_OF_SETS 1', 'BEGIN_DATA'],
    [`"${name}"`, ...rows.map(([, power]) => power.toFixed(6))].join(' '),
    ...['END_DATA', ''],
  ].join('\n');
}

/** ANSI/IES TM-27. */
function tm27(name: string, curve: Curve): string {
  const rows = readings(curve, steps(360, 830, 5));
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<IESTM2714 xmlns="iestm2714" version="1.0">',
    `  <Header><Manufacturer>${maker}</Manufacturer><Description>${name}</Description></Header>`,
    '  <SpectralDistribution>',
    '    <SpectralQuantity>relative</SpectralQuantity>',
    ...rows.map(
      ([nm, power]) =>
        `    <SpectralData wavelength="${nm.toFixed(1)}">${digits(power)}</SpectralData>`,
    ),
    '  </SpectralDistribution>',
    ...['</IESTM2714>', ''],
  ].join('\n');
}

/** A filter that takes away the short wavelengths, in percent. */
function filter(curve: Curve): string {
  const rows = steps(380, 780, 10).map((nm) => `${String(nm)},${digits(100 * curve(nm))}`);
  return [`# ${maker}`, 'nm,transmission %', ...rows, ''].join('\n');
}
/** From a tenth to nine tenths about 525 nm: a warming gel. */
const amber: Curve = (nm) => 0.12 + 0.76 / (1 + Math.exp(-(nm - 525) / 28));

export const sampleSpectra: readonly SampleSpectrum[] = [
  sample('tungsten-3100.xml', 'Tungsten 3100', (name) => tm27(name, tungsten)),
  sample('phosphor-warm.csv', 'Phosphor warm', () => commas(warm)),
  sample('phosphor-cool.csv', 'Phosphor cool', () => semicolons(cool, 0.012)),
  sample('four-channel.tsv', 'Four-channel mix', () => tabs(four)),
  sample('tube.tsv', 'Spiky tube', () => tabs(tube)),
  sample('daylight-6200.txt', 'Daylight 6200', (name) => cgats(name, daylight)),
  sample('amber-gel.csv', 'Amber gel', () => filter(amber)),
];

function sample(file: string, name: string, write: (name: string) => string): SampleSpectrum {
  return { file, name, text: write(name) };
}
