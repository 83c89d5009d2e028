import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { candelaAt } from '../../functions/fixture/photometry.ts';
import type { Photometry } from '../../functions/fixture/photometry.ts';
import { beamEdges } from '../../functions/fixture/beam.ts';
import { luxAt, place } from '../../functions/fixture/rig.ts';
import { zonesOf } from '../../functions/fixture/zones.ts';
import { readLm63 } from '../../src/files/photometric/lm63.ts';
import { readPhotometric } from '../../src/files/photometric/read.ts';
import { checkCases, type Case, type Expressions } from '../support/cases.ts';
import cases from './cases/photometric.json' with { type: 'json' };

const textOf = (file: string) => readFileSync(join(import.meta.dirname, 'photometric-files', file.replace('files/', '')), 'utf8');

function photometryIn(file: string): Photometry {
  const read = readPhotometric(textOf(file));
  if (!read.ok) throw new Error(read.reason);
  return read.photometry;
}

interface Inputs {
  readonly file: string;
  readonly gamma_C_deg?: readonly (readonly [number, number])[];
  readonly C_deg?: number;
  readonly zones_deg?: readonly (readonly [number, number])[];
  readonly lum_m?: readonly [number, number, number];
  readonly point_m?: readonly [number, number, number];
}

/** What each kind of case asks of a file. */
const kinds: Readonly<Record<string, (inputs: Inputs, photometry: Photometry) => number | readonly number[]>> = {
  cd: ({ gamma_C_deg = [] }, photometry) => gamma_C_deg.map(([gamma, c]) => candelaAt(photometry, gamma, c)),
  lm: (_, photometry) => photometry.lumens,
  beam: ({ C_deg = 0 }, photometry) =>
    [0.5, 0.1].map((share) => {
      const { left, right } = beamEdges(photometry, share, C_deg)!;
      return left + right;
    }),
  fields: ({ file }) => readLm63(textOf(file)).fields,
  zone: ({ zones_deg = [] }, photometry) => zones_deg.map(([from, to]) => zonesOf(photometry, from, to)),
  E: ({ lum_m: at = [0, 0, 0], point_m: point = [0, 0, 0] }, photometry) => {
    const fixture = { kind: 'projector', name: '', photometry } as const;
    const light = place({ fixture, at, aim: [at[0], at[1], at[2] - 1], output: 1, loss: 0, roll: 0 })!;
    return luxAt(light, point, [0, 0, 1]);
  },
};

const expressions: Expressions = Object.fromEntries(
  (cases as readonly Case[]).map(({ id, inputs }) => {
    const given = inputs as unknown as Inputs;
    const kind = id.split('-')[2] ?? '';
    const work = kinds[kind];
    if (!work) throw new Error(`There is no way to work out ${kind}.`);
    return [id, () => work(given, photometryIn(given.file))];
  }),
);

checkCases('photometric files', cases as readonly Case[], expressions);
