import { describe, expect, it } from 'vitest';
import { call } from '../../functions/call.ts';
import type { AnyDefinition } from '../../functions/define.ts';
import { defaultWriting } from '../../functions/quantities/settings.ts';
import { receptors } from '../../functions/receptors.ts';
import { isError, type Argument, type FunctionError, type Value } from '../../functions/values.ts';

/** A check case: what goes in, what must come out, how close, and who says so. */
export interface Case {
  readonly id: string;
  readonly topic: string;
  readonly description: string;
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: number | readonly number[];
  readonly tolerance: Tolerance;
  readonly source: string;
  /** `published`: printed; `library`: from a reference library; `computed`: computed apart from us. */
  readonly basis: string;
}

interface Tolerance {
  readonly abs?: number | readonly number[];
  readonly rel?: number | readonly number[];
}

/** How each case is written with our functions. */
export type Expressions = Readonly<Record<string, () => number | readonly number[]>>;

const settings = {
  writing: defaultWriting,
  book: { receptor: receptors.get('dome') ?? Number.NaN, continuousShare: 0.8, tolerance: 1 / 3 },
};

/** What a function gives in a cell: a value, or the error that the cell shows. */
export function inCell(
  definition: AnyDefinition,
  ...args: readonly Argument[]
): Value | FunctionError {
  return call(definition, args, settings);
}

/** The number that a function gives in a cell; anything else fails the test. */
export function number(definition: AnyDefinition, ...args: readonly Argument[]): number {
  const result = inCell(definition, ...args);
  if (typeof result === 'number') return result;
  throw new Error(`${definition.name} gave ${isError(result) ? result.message : String(result)}`);
}

/** The sentence that a cell shows when a function refuses. */
export function refusal(definition: AnyDefinition, ...args: readonly Argument[]): string {
  const result = inCell(definition, ...args);
  if (isError(result)) return result.message;
  throw new Error(`${definition.name} gave ${String(result)} and no error`);
}

/**
 * Tests every case of a topic against the expression written for it. A case without an expression
 * must stand in `unexpressed` with the reason; one that stands nowhere fails.
 */
export function checkCases(
  topic: string,
  cases: readonly Case[],
  expressions: Expressions,
  unexpressed: Readonly<Record<string, string>> = {},
): void {
  describe(`reference cases: ${topic}`, () => {
    it('each case is expressed or listed with the reason', () => {
      const listed = [...Object.keys(expressions), ...Object.keys(unexpressed)].sort();
      expect(listed).toEqual(cases.map(({ id }) => id).sort());
      for (const reason of Object.values(unexpressed)) expect(reason).toMatch(/\w+ \w+/);
    });
    for (const { id, description, expected, tolerance, source } of cases) {
      const expression = expressions[id];
      if (expression === undefined) continue;
      it(`${description} [${id}]`, () => {
        const given = [expression()].flat();
        const wanted = [expected].flat();
        expect(given).toHaveLength(wanted.length);
        wanted.forEach((value, index) => {
          const allowed = allowance(tolerance, value, index);
          expect(allowed).toBeGreaterThan(0);
          const off = Math.abs((given[index] ?? Number.NaN) - value);
          expect(off, `${given[index]} against ${value}: ${source}`).toBeLessThanOrEqual(allowed);
        });
      });
    }
  });
}

function allowance({ abs, rel }: Tolerance, value: number, index: number): number {
  const at = (limit: number | readonly number[]): number =>
    typeof limit === 'number' ? limit : (limit[index] ?? Number.NaN);
  if (abs !== undefined) return at(abs);
  return rel === undefined ? Number.NaN : at(rel) * Math.abs(value);
}
