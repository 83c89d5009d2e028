import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { exampleFixtures } from '../../../functions/fixture/exampleFixtures.ts';
import { exampleSpectra } from '../../../functions/spectrum/exampleSpectra.ts';
import { byName, catalogue } from '../../../functions/index.ts';
import { sources } from '../../../functions/sources.ts';
import type { Value } from '../../../functions/values.ts';
import type { WrittenExample } from '../../../src/reference/examples.ts';
import { manners } from '../../../src/reference/manners.ts';
import { bibliographyOf, pageOf, referenceOf } from '../../../src/reference/page.ts';
import { signatureOf } from '../../../src/reference/signature.ts';
import { openBook } from '../engine/support/openBook.ts';

const fixtures = () => exampleFixtures;
const spectra = () => exampleSpectra;
const pages = referenceOf(catalogue).flatMap(({ functions }) => functions);
const written = readFileSync(join(import.meta.dirname, '../../../functions/README.md'), 'utf8');

function definitionOf(name: string) {
  const definition = byName.get(name);
  if (!definition) throw new Error(`${name} is no function.`);
  return definition;
}

describe('the reference', () => {
  it('has every function once, under its family', () => {
    expect(pages.map(({ name }) => name).sort()).toEqual([...byName.keys()].sort());
  });

  it('has every source that is cited, once', () => {
    expect(bibliographyOf(pages).map(({ name }) => name)).toEqual(Object.keys(sources).sort());
  });

  it('says what holds for every function', () => {
    for (const one of manners) expect(written).toContain(`- ${one}\n`);
  });

  it('is written beside the functions with a heading for each, and each link leads to one', () => {
    const headings = [...written.matchAll(/^#+ (.+)$/gm)].map(([, text = '']) => text);
    for (const { name } of pages) expect(headings).toContain(name);
    const anchors = headings.map((text) =>
      text
        .toLowerCase()
        .replaceAll(/[^a-z0-9 -]/g, '')
        .replaceAll(' ', '-'),
    );
    const links = [...written.matchAll(/\]\(#([^)]+)\)/g)].map(([, target = '']) => target);
    expect(links.length).toBeGreaterThan(500);
    expect(links.filter((target) => !anchors.includes(target))).toEqual([]);
  });
});

describe('every function', () => {
  it.each(pages.map((page) => [page.name, page] as const))(
    '%s says how it is worked out, from where, with two examples, where it ends and what finds it',
    (_, { equation, sources: cited, examples, limits, search }) => {
      expect(equation).toMatch(/\S/);
      expect(cited.length).toBeGreaterThan(0);
      expect(examples.length).toBeGreaterThanOrEqual(2);
      expect(limits).toMatch(/\.$/);
      expect(search.length).toBeGreaterThanOrEqual(2);
    },
  );
});

describe('a signature', () => {
  it.each([
    ['STOPS', 'STOPS(level, reference)'],
    ['EV', 'EV(f_number, time, iso = 100)'],
    ['EVLUX', 'EVLUX(ev, receptor = "flat")'],
    ['INCIDENTF', 'INCIDENTF(lux, iso, time, receptor = the book’s receptor)'],
    ['NEWDISTANCE', 'NEWDISTANCE(distance, factor, nearest?)'],
    ['FCOMBINE', 'FCOMBINE(readings…)'],
  ])('%s shows what may be left out', (name, signature) => {
    expect(signatureOf(definitionOf(name))).toBe(signature);
  });
});

describe('a parameter', () => {
  it('says its quantity, the unit of a bare number, and what is allowed', () => {
    const [lux, distance] = pageOf(definitionOf('CANDELALUX')).parameters;
    expect(lux).toMatchObject({ takes: 'luminous intensity, in cd', allowed: 'zero or more' });
    expect(distance).toMatchObject({ takes: 'distance, in m', allowed: 'more than zero' });
    const [, , incidence] = pageOf(definitionOf('CANDELALUX')).parameters;
    expect(incidence).toMatchObject({ takes: 'angle, in °', leftOut: '0' });
  });

  it('names the unit though its letter be in the words, and prints a minus', () => {
    const [, , , offset] = pageOf(definitionOf('SUNALTITUDE')).parameters;
    expect(offset).toMatchObject({ takes: 'length of time, in h', allowed: 'from −14 to 14' });
    const [, time] = pageOf(definitionOf('EV')).parameters;
    expect(time).toMatchObject({ takes: 'exposure time, in s' });
    expect(pageOf(definitionOf('MIREDSHIFT')).result).toBe('mired value');
    expect(pageOf(definitionOf('STOPS')).result).toBe('number of stops');
  });

  it('takes a range, or several one after the other', () => {
    expect(pageOf(definitionOf('FCOMBINE')).parameters[0]?.takes).toMatch(/^f-number: a range, or/);
    expect(pageOf(definitionOf('CIRCUITSFOR')).parameters[0]?.takes).toMatch(/: a range$/);
  });
});

/** What a book shows for the formula of an example, with the cells filled that it names. */
function typed({ formula, cells }: WrittenExample): unknown {
  const rows: string[][] = [];
  cells.forEach(({ range, holds }, column) => {
    const [from, to] = range.split(':').map((address) => address.replace(/\d+/, ''));
    if (from !== to) {
      const lines = holds.split('; ').map((line) => line.split(', '));
      rows.push(...lines.map((line) => line.map((text) => (text === 'empty' ? '' : text))));
      return;
    }
    holds.split(', ').forEach((text, row) => {
      const cellsOfRow = (rows[row] ??= []);
      while (cellsOfRow.length < column) cellsOfRow.push('');
      cellsOfRow[column] = text === 'empty' ? '' : text;
    });
  });
  const { value } = openBook(
    { Sheet: [...rows, ...Array<string[]>(9).fill([]), [formula]] },
    { fixtures, spectra },
  );
  return value(`A${String(rows.length + 10)}`);
}

/** Written with ten digits, so not held to more than eight. */
function same(given: unknown, expected: Value, within = 0): boolean {
  if (typeof given !== 'number' || typeof expected !== 'number') return given === expected;
  return Math.abs(given - expected) <= within + 1e-8 * Math.max(1, Math.abs(expected));
}

describe('examples give in a book what the reference says', () => {
  for (const definition of catalogue) {
    it(definition.name, () => {
      pageOf(definition).examples.forEach((example, index) => {
        const { result, within } = definition.examples[index]!;
        const given = typed(example);
        expect(
          same(given, result, within),
          `${example.formula} gave ${JSON.stringify(given)}`,
        ).toBe(true);
        const alone = openBook({ Sheet: [[example.alone]] }, { fixtures, spectra }).value('A1');
        expect(same(alone, result, within), `${example.alone} gave ${JSON.stringify(alone)}`).toBe(
          true,
        );
      });
    });
  }
});
