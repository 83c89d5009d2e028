import { parse } from 'papaparse';
import { describe, expect, it } from 'vitest';
import { readSingle } from '../../functions/arguments/single.ts';
import { call } from '../../functions/call.ts';
import type { AnyDefinition, Parameter } from '../../functions/define.ts';
import { catalogue } from '../../functions/index.ts';
import { near } from '../../functions/near.ts';
import { usual } from '../../functions/usual.ts';
import { blank, isError, type Argument, type Value } from '../../functions/values.ts';
import { writeColumn } from '../../src/formula/address.ts';
import { expand } from '../../src/formula/expand.ts';
import { flatSheet, type Cell } from '../support/flatSheet.ts';
import { libreOffice, recalculated, withoutLibreOffice } from '../support/libreoffice.ts';
import { chance, seed } from '../unit/functions/support/chance.ts';
import { sampleFor } from '../unit/functions/support/samples.ts';

const samples = 20;
const share = 1e-9;
const expandable = catalogue.filter(({ formula }) => typeof formula === 'string');
const next = chance(seed);

/** One line of the sheet: what our function gives, and the plain formula beside its arguments. */
interface Line {
  readonly name: string;
  readonly formula: string;
  readonly ours: Value;
  readonly cells: readonly Cell[];
}

const mayBeLeftOut = ({ optional, default: value, fromBook }: Parameter) =>
  optional === true || value !== undefined || fromBook !== undefined;

/** How many arguments are written: sometimes all, sometimes only those that must be. */
function argumentCount({ parameters }: AnyDefinition): number {
  const needed = parameters.filter((parameter) => !mayBeLeftOut(parameter)).length;
  return needed + Math.floor(next() * (parameters.length - needed + 1));
}

/** A random line at this row, or undefined where our function refuses what chance brought. */
function lineAt(row: number, definition: AnyDefinition): Line | undefined {
  const handed = sampleFor(definition, next).slice(0, argumentCount(definition));
  const cells: Cell[] = [];
  const texts: (string | undefined)[] = [];
  const args: Argument[] = [];
  const place = (content: Cell) => {
    cells.push(content);
    return `${writeColumn({ index: cells.length + 1, fixed: false })}${String(row + 1)}`;
  };
  handed.forEach((value, index) => {
    const parameter = definition.parameters[index]!;
    if (value === undefined) {
      args.push(undefined);
      texts.push(undefined);
    } else if (Array.isArray(value)) {
      const readings = [...(value as number[]), null, 1 + next()];
      const ends = readings.map((reading) =>
        place(reading === null ? null : exact(definition, parameter, reading)),
      );
      args.push({ cells: readings.map((reading) => ({ value: reading ?? blank })) });
      texts.push(`${ends[0]}:${ends.at(-1)}`);
    } else {
      const number = exact(definition, parameter, value);
      args.push(number);
      texts.push(next() < 0.3 ? String(number) : place(number));
    }
  });
  const ours = call(definition, args, usual);
  if (isError(ours)) return undefined;
  const plain = expand(definition, texts, usual);
  if (!plain.ok) throw new Error(plain.reason);
  return { name: definition.name, formula: `=${plain.text}`, ours, cells };
}

/** What a cell of ours holds for this number: the exact f-number of a mark. */
function exact(definition: AnyDefinition, parameter: Parameter, value: unknown): number {
  const read = readSingle({ name: definition.name, parameter, settings: usual }, value as number);
  if (typeof read === 'number') return read;
  throw new Error(`${definition.name}: ${parameter.name} is no number in a sheet.`);
}

function lines(): Line[] {
  const all: Line[] = [];
  for (const definition of expandable) {
    for (let tries = 0, found = 0; found < samples; tries += 1) {
      if (tries > 50 * samples) throw new Error(`${definition.name} refuses its own samples.`);
      const line = lineAt(all.length, definition);
      if (!line) continue;
      all.push(line);
      found += 1;
    }
  }
  return all;
}

interface Compared {
  readonly line: Line;
  /** What LibreOffice gives, as it writes it. */
  readonly given: string;
}

let worked: ReadonlyMap<string, readonly Compared[]> | undefined;

/** The whole sheet, worked out by LibreOffice once, by function. */
function workedOut(): ReadonlyMap<string, readonly Compared[]> {
  if (worked) return worked;
  const written = lines();
  const sheet = flatSheet(written.map(({ name, formula, cells }) => [name, formula, ...cells]));
  const rows = parse<string[]>(recalculated('plain.fods', sheet).trimEnd()).data;
  expect(rows).toHaveLength(written.length);
  const byName = new Map<string, Compared[]>();
  for (const [index, line] of written.entries()) {
    const [name = '', given = ''] = rows[index] ?? [];
    expect(name).toBe(line.name);
    byName.set(name, [...(byName.get(name) ?? []), { line, given }]);
  }
  worked = byName;
  return worked;
}

const agrees = (given: string, ours: Value) =>
  typeof ours === 'number'
    ? given !== '' && near(Number(given), ours, share)
    : given === String(ours).toUpperCase();

describe(`plain formulas in LibreOffice agree to ${share} · max(1, |value|) (SEED=${seed})`, () => {
  if (withoutLibreOffice !== undefined) {
    it.skip(withoutLibreOffice, () => undefined);
    return;
  }
  it('LibreOffice is there and works the whole sheet out', () => {
    expect(libreOffice, 'REQUIRE names libreoffice: soffice must be on the path').toBeDefined();
    expect(workedOut().size).toBe(expandable.length);
  });
  for (const { name } of expandable) {
    it(`${name} on ${samples} random inputs`, () => {
      const compared = workedOut().get(name) ?? [];
      expect(compared).toHaveLength(samples);
      for (const { line, given } of compared) {
        const { formula, ours, cells } = line;
        const told = `${given} for ${String(ours)}: ${formula} beside ${JSON.stringify(cells)}`;
        expect(agrees(given, ours), told).toBe(true);
      }
    });
  }
});
