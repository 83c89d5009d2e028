import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { call } from '../../../functions/call.ts';
import type { AnyDefinition, Parameter } from '../../../functions/define.ts';
import { catalogue } from '../../../functions/index.ts';
import { units } from '../../../functions/quantities/units.ts';
import {
  isError,
  type Argument,
  type FunctionError,
  type Value,
} from '../../../functions/values.ts';
import { anyArgument } from './support/arguments.ts';
import { seed } from './support/chance.ts';
import { argumentsOf } from './support/samples.ts';
import { settings } from './support/settings.ts';

const runs = 300;
const codes = ['#N/A', '#NUM!', '#VALUE!', '#DIV/0!', '#REF!', '#NAME?', '#CYCLE!', '#ERROR!'];

/** A sentence; or the quiet words of a cell that waits, sees no light or cannot be helped. */
const sentence = /^[“"A-Z0-9].*[.?]$/su;
const quietWords = /^\S+( \S+)+ \S*[^.\s]$/u;

function isProper(result: unknown): boolean {
  if (typeof result === 'number') return Number.isFinite(result) && !Object.is(result, -0);
  if (!isError(result)) return typeof result === 'string' || typeof result === 'boolean';
  const { code, message, quiet, waiting } = result;
  const words = quiet || waiting ? quietWords : sentence;
  return codes.includes(code) && words.test(message) && !/undefined|\[object/.test(message);
}

/** Arguments of the first example, whole, with one of them replaced. */
function withArgument(definition: AnyDefinition, index: number, argument: Argument): Argument[] {
  const [example] = definition.examples;
  const args = example ? argumentsOf(example) : [];
  const whole = definition.parameters.map((parameter, at) => args[at] ?? parameter.default);
  return whole.map((given, at) => (at === index ? argument : given));
}

function eachParameter(
  test: (definition: AnyDefinition, parameter: Parameter, index: number) => void,
  wanted: (parameter: Parameter) => boolean = () => true,
): void {
  for (const definition of catalogue) {
    for (const [index, parameter] of definition.parameters.entries()) {
      if (!wanted(parameter)) continue;
      it(`${definition.name}(${parameter.name})`, () => test(definition, parameter, index));
    }
  }
}

function errorFrom(definition: AnyDefinition, args: readonly Argument[]): FunctionError {
  const result: Value | FunctionError = call(definition, args, settings);
  if (!isError(result)) throw new Error(`${definition.name} gave ${String(result)} and no error`);
  return result;
}

describe('whatever a formula hands over, a cell gets a value or a sentence', () => {
  for (const definition of catalogue) {
    const { parameters } = definition;
    it(`${definition.name} on arguments of any kind`, () => {
      const args = fc.array(anyArgument, { maxLength: parameters.length + 2 });
      fc.assert(
        fc.property(args, (given) => isProper(call(definition, given, settings))),
        { numRuns: runs, seed },
      );
    });
    it(`${definition.name} on good arguments with one of any kind`, () => {
      const place = fc.nat({ max: Math.max(0, parameters.length - 1) });
      fc.assert(
        fc.property(place, anyArgument, (index, argument) =>
          isProper(call(definition, withArgument(definition, index, argument), settings)),
        ),
        { numRuns: runs, seed },
      );
    });
  }
});

describe('a blank cell is waited for by its argument’s name', () => {
  eachParameter((definition, { name }, index) => {
    const error = errorFrom(definition, withArgument(definition, index, { blank: true }));
    expect(error).toEqual({ code: '#N/A', message: `waiting for ${name}`, waiting: true });
    const named = withArgument(definition, index, { blank: true, at: 'B4' });
    expect(errorFrom(definition, named).message).toBe(`waiting for ${name} (B4)`);
  });
});

describe('a range of blank cells is waited for', () => {
  eachParameter(
    (definition, { name }, index) => {
      const cells = ['C1', 'C2'].map((at) => ({ value: { blank: true, at } as const, at }));
      const error = errorFrom(definition, withArgument(definition, index, { cells }));
      expect(error).toEqual({ code: '#N/A', message: `waiting for ${name} (C1)`, waiting: true });
    },
    ({ range }) => range === true,
  );
});

describe('zero light is said in quiet words', () => {
  eachParameter(
    (definition, { name }, index) => {
      const error = errorFrom(definition, withArgument(definition, index, 0));
      expect(error.code).toBe('#NUM!');
      expect(error.message).toBe(`no light at ${name}`);
      expect(error.quiet).toBe(true);
    },
    ({ domain }) => domain?.needsLight === true,
  );
});

describe('an error in an argument passes through unchanged', () => {
  eachParameter((definition, { range }, index) => {
    for (const handed of [
      { code: '#REF!', message: 'The cell is gone.' },
      { code: '#N/A', message: 'waiting for Fill side', waiting: true },
    ] as const satisfies readonly FunctionError[]) {
      expect(errorFrom(definition, withArgument(definition, index, handed))).toBe(handed);
      if (!range) continue;
      const cells = [
        { value: 1, at: 'A1' },
        { value: handed, at: 'A2' },
      ];
      expect(errorFrom(definition, withArgument(definition, index, { cells }))).toBe(handed);
    }
  });
});

describe('a unit of the wrong kind says what was expected and what was given', () => {
  const wordless = ['text', 'anything', 'truth', 'receptor', 'measured', 'dateTime', 'table'];
  eachParameter(
    (definition, { name, quantity }, index) => {
      const given = quantity === 'mired' || quantity === 'level' ? '3 m' : '178 mired';
      const error = errorFrom(definition, withArgument(definition, index, given));
      expect(error.code).toBe('#VALUE!');
      expect(error.message).toContain(`${definition.name}: ${name}: Expected `);
      expect(error.message).toContain(
        `${given} is ${units[given === '3 m' ? 'length' : 'mired'].one}`,
      );
    },
    ({ quantity }) => !wordless.includes(quantity),
  );
});

describe('outside its domain an argument is named, with its value and what is allowed', () => {
  eachParameter(
    (definition, { name, domain, quantity }, index) => {
      const outside = [-7.25, 1e9, 0].find((value) => !domain?.allows(value));
      if (outside === undefined) throw new Error(`${name} takes any number`);
      const error = errorFrom(definition, withArgument(definition, index, outside));
      expect(error.code).toBe('#NUM!');
      expect(error.message).toBe(
        `${definition.name}: ${name} must be ${domain?.says}, not ${outside}.`,
      );
      expect(quantity).not.toBe('text');
    },
    ({ domain, kinds }) =>
      domain !== undefined && !kinds && [-7.25, 1e9].some((value) => !domain.allows(value)),
  );
});

describe('a truth or a word is no number', () => {
  const others = ['text', 'anything', 'truth', 'dateTime', 'table'];
  eachParameter(
    (definition, { name }, index) => {
      for (const argument of [true, 'three or so']) {
        const error = errorFrom(definition, withArgument(definition, index, argument));
        expect(error.code).toBe('#VALUE!');
        expect(error.message).toContain(name);
        expect(error.message).toContain(String(argument));
      }
    },
    ({ quantity, kinds }) => !others.includes(quantity) && !kinds,
  );
});
