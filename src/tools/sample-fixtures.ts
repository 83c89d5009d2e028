/**
 * Invented fixtures with photometric files of our own, each from a shape that is stated here. No
 * lamp of this make exists: the files show what such lamps are like and what the readers read.
 */
export interface SampleFixture {
  readonly file: string;
  readonly name: string;
  readonly text: string;
}

const maker = 'Harbour Hours sample fixtures (invented)';
const radians = (degrees: number) => (degrees * Math.PI) / 180;
const steps = (from: number, to: number, step: number) =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step);
const written = (value: number) => String(Number(value.toPrecision(5)));

/** A beam of `beam` degrees at a half; the higher the power, the flatter its middle. */
const bell = (candela: number, beam: number, power: number) => (gamma: number) =>
  candela * 2 ** -((gamma / (beam / 2)) ** power);

interface Lamp {
  readonly name: string;
  readonly watts: number;
  readonly gammas: readonly number[];
  readonly planes: readonly number[];
  /** In metres: along C0, along C90. Below zero for a round opening. */
  readonly face: readonly [level: number, upright: number];
  readonly candela: (gamma: number, c: number) => number;
}

function wrapped(values: readonly number[]): string[] {
  const lines: string[] = [];
  for (let from = 0; from < values.length; from += 10)
    lines.push(
      values
        .slice(from, from + 10)
        .map(written)
        .join(' '),
    );
  return lines;
}

function lm63(first: string, { name, watts, gammas, planes, face, candela }: Lamp): string {
  const [level, upright] = face;
  return [
    first,
    '[TEST] none, invented data',
    `[MANUFAC] ${maker}`,
    `[LUMINAIRE] ${name}`,
    'TILT=NONE',
    `1 -1 1 ${gammas.length} ${planes.length} 1 2 ${upright} ${level} 0`,
    `1 1 ${watts}`,
    ...wrapped(gammas),
    ...wrapped(planes),
    ...planes.flatMap((c) => wrapped(gammas.map((gamma) => candela(gamma, c)))),
    '',
  ].join('\r\n');
}

/** Symmetric about both planes, planes every 15°, the luminaire’s own 1000 lm as the measure. */
function eulumdat({ name, watts, gammas, face, candela }: Lamp): string {
  const planes = steps(0, 345, 15);
  const [level, upright] = face.map((metres) => Math.round(metres * 1000));
  const lamps = [1, -1, 'light source', 1000, '5600 K', '1A', watts];
  return [
    ...[maker, 2, 4, planes.length, 15, gammas.length, gammas[1]! - gammas[0]!],
    ...['none, invented data', name, 'sample', 'sample', 'invented'],
    ...[upright, level, 60, upright, level, 0, 0, 0, 0],
    ...[100, 100, 1, 0, ...lamps],
    ...Array.from({ length: 10 }, () => 0.7),
    ...planes,
    ...gammas,
    ...steps(0, 90, 15).flatMap((c) => gammas.map((gamma) => written(candela(gamma, c)))),
    '',
  ].join('\r\n');
}

const round = [0];
const half = steps(0, 90, 2.5);

export const sampleFixtures: readonly SampleFixture[] = [
  sample('fresnel-650-spot.ies', 'Fresnel 650 at spot', (name) =>
    // Beam 10°, a soft edge: power 1.7.
    lm63('IESNA:LM-63-2002', {
      ...{ name, watts: 650, planes: round, face: [-0.13, -0.13] },
      gammas: [...steps(0, 15, 0.5), ...steps(16, 30, 1), 35, 45, 60, 90],
      candela: bell(48_000, 10, 1.7),
    }),
  ),
  sample('fresnel-650-flood.ies', 'Fresnel 650 at flood', (name) =>
    // The same lamp wide: beam 50°, flat in the middle: power 3.5.
    lm63('IESNA:LM-63-2002', {
      ...{ name, watts: 650, planes: round, face: [-0.13, -0.13] },
      gammas: [...steps(0, 60, 2), 70, 80, 90],
      candela: bell(4_600, 50, 3.5),
    }),
  ),
  sample('profile-19.ies', 'Small profile 19°', (name) =>
    // An even disc of light with a cut edge: power 14.
    lm63('IES:LM-63-2019', {
      ...{ name, watts: 200, planes: round, face: [-0.1, -0.1] },
      gammas: [...steps(0, 14, 0.25), 16, 20, 45, 90],
      candela: bell(26_000, 19, 14),
    }),
  ),
  sample('open-face-800.ies', 'Open face 800', (name) =>
    // A rod of a lamp before a trough: wide and level, narrower upright.
    lm63('IESNA:LM-63-1995', {
      ...{ name, watts: 800, planes: steps(0, 90, 15), face: [0.2, 0.14], gammas: half },
      candela: (gamma, c) => bell(8_200, 74 + 26 * Math.cos(radians(c)) ** 2, 2.2)(gamma),
    }),
  ),
  sample('soft-panel.ldt', 'Soft panel 60 × 30', (name) =>
    // Nearly matt: cos^1.3 along, cos^1.6 across.
    eulumdat({
      ...{ name, watts: 180, planes: round, face: [0.6, 0.3], gammas: half },
      candela: (gamma, c) =>
        4_300 * Math.max(0, Math.cos(radians(gamma))) ** (1.6 - 0.3 * Math.cos(radians(c)) ** 2),
    }),
  ),
  sample('tube-120.ldt', 'Tube 120', (name) =>
    // A glowing line along C0: the sine of the angle to it, and a third as much to its back.
    eulumdat({
      ...{ name, watts: 50, planes: round, face: [1.2, 0.04], gammas: steps(0, 180, 5) },
      candela: (gamma, c) => {
        const along = Math.sin(radians(gamma)) * Math.cos(radians(c));
        const back = (2 + Math.cos(radians(gamma))) / 3;
        return 620 * Math.sqrt(Math.max(0, 1 - along ** 2)) * back;
      },
    }),
  ),
];

function sample(file: string, name: string, write: (name: string) => string): SampleFixture {
  return { file, name, text: write(name) };
}
