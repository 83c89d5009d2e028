import { prepare } from '../../functions/call.ts';
import type { AnyDefinition } from '../../functions/define.ts';
import { byName, catalogue } from '../../functions/index.ts';
import { usual } from '../../functions/usual.ts';
import { isError, type Argument, type TableRow } from '../../functions/values.ts';
import { exampleFixtures } from '../../functions/fixture/exampleFixtures.ts';
import { exampleSpectra } from '../../functions/spectrum/exampleSpectra.ts';
import { ephemeris } from '../../src/engine/ephemeris.ts';
import { chance } from '../unit/functions/support/chance.ts';
import { sampleFor } from '../unit/functions/support/samples.ts';
import { medianTime, type Row } from './bench.ts';
import { bareNearest } from './nearest.ts';

export const name = 'Functions against a bare implementation of the same equation';

const settings = { ...usual, ephemeris, fixtures: exampleFixtures, spectra: exampleSpectra };
const different = 64;

function definitionOf(wanted: string): AnyDefinition {
  const definition = byName.get(wanted);
  if (!definition) throw new Error(`${wanted} is no function.`);
  return definition;
}

/** Arguments from where the trade lives, as `run` gets them, that the function does not refuse. */
function samplesOf(definition: AnyDefinition): unknown[][] {
  const next = chance(1);
  const made: unknown[][] = [];
  for (let tries = 0; made.length < different && tries < 100 * different; tries += 1) {
    const handed = sampleFor(definition, next);
    if (!isError(prepare(definition)(asArguments(handed), settings))) made.push(handed);
  }
  return made;
}

/** The same as a formula hands them over: lists become ranges. */
function asArguments(handed: readonly unknown[]): Argument[] {
  return handed.map((value) => {
    if (!Array.isArray(value)) return value;
    const rows = value as readonly (number | TableRow)[];
    const cells = rows.flatMap((row) => (typeof row === 'number' ? { value: row } : row));
    return { cells, width: cells.length / rows.length };
  }) as Argument[];
}

/** Calls enough of them to be measured: a run of the bare equation is well under a microsecond. */
async function timeOf(
  samples: readonly unknown[][],
  times: number,
  work: (...args: never[]) => unknown,
) {
  let last: unknown;
  const took = await medianTime(() => {
    for (let turn = 0; turn < times; turn += 1) {
      for (const handed of samples) last = work(...(handed as never[]));
    }
  });
  if (last === undefined) throw new Error('Nothing was worked out.');
  return took;
}

const perSecond = (calls: number, milliseconds: number) =>
  `${Math.round((1000 * calls) / milliseconds).toLocaleString('en')} a second`;

async function colourRow(wanted: string, bare: (x: number, y: number) => number): Promise<Row> {
  const definition = definitionOf(wanted);
  const samples = samplesOf(definition);
  const called = prepare(definition);
  const times = 50;
  const took = await timeOf(samples, times, (...args: Argument[]) => called(args, settings));
  const tookAgainst = await timeOf(samples, times, bare);
  return {
    what: `${wanted}, ${perSecond(times * samples.length, took)}`,
    took,
    against: `a bare table and triangle (Ohno), ${perSecond(times * samples.length, tookAgainst)}`,
    tookAgainst,
    atMost: 2,
  };
}

/** Equations as a programmer would type them, for what people calculate most. */
const bare: Readonly<Record<string, (...args: number[]) => number>> = {
  STOPS: (level = 0, reference = 0) => Math.log2(level / reference),
  FSTOPS: (reading = 0, reference = 0) => 2 * Math.log2(reading / reference),
  INVERSESQUARE: (lux = 0, distance = 0, newDistance = 0) => lux * (distance / newDistance) ** 2,
  INCIDENTF: (lux = 0, iso = 0, time = 0, receptor = 0) => Math.sqrt((lux * iso * time) / receptor),
};

async function equationRow(wanted: string): Promise<Row> {
  const definition = definitionOf(wanted);
  const samples = samplesOf(definition);
  const called = prepare(definition);
  const equation = bare[wanted]!;
  const times = 5000;
  const took = await timeOf(samples, times, (...args: Argument[]) => called(args, settings));
  const tookAgainst = await timeOf(samples, times, equation as (...args: never[]) => number);
  return {
    what: `${wanted}, ${(1e6 * (took / (times * samples.length))).toFixed(0)} ns a call`,
    took,
    against: 'its equation alone, arguments unread',
    tookAgainst,
  };
}

/** Every function called with its arguments read, against its `run`: the equation and nothing else. */
async function wholeCatalogue(): Promise<Row> {
  let [took, tookAgainst, calls] = [0, 0, 0];
  const times = 20;
  for (const definition of catalogue) {
    const samples = samplesOf(definition);
    const asHanded = samples.map(asArguments);
    const called = prepare(definition);
    const { run, runUnder, runWith, runFrom } = definition;
    const equation = runUnder
      ? (...args: never[]) => runUnder(ephemeris, ...args)
      : (...args: never[]) =>
          runWith?.(exampleFixtures, ...args) ?? runFrom?.(exampleSpectra, ...args) ?? run(...args);
    took += await timeOf(asHanded, times, (...args: Argument[]) => called(args, settings));
    tookAgainst += await timeOf(samples, times, equation);
    calls += times * samples.length;
  }
  return {
    what: `all ${catalogue.length} functions, ${(1000 * (took / calls)).toFixed(2)} µs a call`,
    took,
    against: 'their equations alone, arguments unread',
    tookAgainst,
    atMost: 1.5,
  };
}

export async function run(): Promise<Row[]> {
  const nearest = bareNearest();
  const rows = [
    await colourRow('CCT', (x, y) => nearest(x, y).kelvin),
    await colourRow('DUV', (x, y) => nearest(x, y).duv),
  ];
  for (const wanted of Object.keys(bare)) rows.push(await equationRow(wanted));
  rows.push(await wholeCatalogue());
  return rows;
}
