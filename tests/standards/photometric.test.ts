import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { call } from '../../functions/call.ts';
import type { AnyDefinition } from '../../functions/define.ts';
import FIXTUREBEAM from '../../functions/fixture/FIXTUREBEAM.ts';
import FIXTURECANDELA from '../../functions/fixture/FIXTURECANDELA.ts';
import FIXTURELUMENS from '../../functions/fixture/FIXTURELUMENS.ts';
import POINTLUX from '../../functions/fixture/POINTLUX.ts';
import type { Fixtures } from '../../functions/fixture/fixture.ts';
import { usual } from '../../functions/usual.ts';
import { isError, type Argument } from '../../functions/values.ts';
import { readLm63 } from '../../src/files/photometric/lm63.ts';
import { readPhotometric } from '../../src/files/photometric/read.ts';
import { checkCases, type Case, type Expressions } from '../support/cases.ts';
import cases from './cases/photometric.json' with { type: 'json' };

const textOf = (name: string) =>
  readFileSync(join(import.meta.dirname, 'photometric-files', name.replace('files/', '')), 'utf8');

/** A book whose fixtures go by the names of their files. */
const fixtures: Fixtures = {
  names: [],
  named(name) {
    const read = readPhotometric(textOf(name));
    return read.ok ? { kind: 'projector', name, photometry: read.photometry } : read.reason;
  },
};

function inBook(definition: AnyDefinition, ...args: readonly Argument[]): number {
  const result = call(definition, args, { ...usual, fixtures });
  if (isError(result)) throw new Error(result.message);
  return Number(result);
}

type Pair = readonly [number, number];
type Place = readonly [number, number, number];

interface Inputs {
  readonly file: string;
  readonly gamma_C_deg?: readonly Pair[];
  readonly C_deg?: number;
  readonly zones_deg?: readonly Pair[];
  readonly lum_m?: Place;
  readonly point_m?: Place;
}

/** What each kind of case asks of a file, as formulas of a book. */
const kinds: Readonly<Record<string, (inputs: Inputs) => number | readonly number[]>> = {
  cd: ({ file, gamma_C_deg = [] }) =>
    gamma_C_deg.map(([gamma, c]) => inBook(FIXTURECANDELA, file, gamma, c)),
  lm: ({ file }) => inBook(FIXTURELUMENS, file),
  beam: ({ file, C_deg = 0 }) => [0.5, 0.1].map((share) => inBook(FIXTUREBEAM, file, share, C_deg)),
  fields: ({ file }) => readLm63(textOf(file)).fields,
  zone: ({ file, zones_deg = [] }) =>
    zones_deg.map(([from, to]) => inBook(FIXTURELUMENS, file, from, to)),
  // Straight down, level right is the right of the plan: C0 along +x.
  E: ({ file, lum_m: [x, y, z] = [0, 0, 0], point_m: point = [0, 0, 0] }) => {
    const cells = [file, x, y, z, x, y, z - 1].map((value) => ({ value }));
    return inBook(POINTLUX, { cells, width: cells.length }, ...point, 0, 90);
  },
};

const known: readonly Case[] = cases;
const expressions: Expressions = Object.fromEntries(
  known.map(({ id, inputs }) => {
    const work = kinds[id.split('-')[2] ?? ''];
    if (!work) throw new Error(`There is no formula for ${id}.`);
    return [id, () => work(inputs as unknown as Inputs)];
  }),
);

checkCases('photometric files', known, expressions);
