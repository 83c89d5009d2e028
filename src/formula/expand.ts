import { leftOut } from '../../functions/arguments/readArguments.ts';
import { readSingle } from '../../functions/arguments/single.ts';
import type { CallSettings } from '../../functions/call.ts';
import type { AnyDefinition, Parameter } from '../../functions/define.ts';
import { isError } from '../../functions/values.ts';
import { tokensOf, type Token } from './tokens.ts';
import { words } from '../words/words.ts';

/** The formula without our functions, or the reason why there is none, as a sentence. */
export type Expansion =
  { readonly ok: true; readonly text: string } | { readonly ok: false; readonly reason: string };

/**
 * A call of one of our functions, written with standard OpenFormula functions only.
 *
 * The arguments are formula texts as they stand in the call (`B2`, `"f/5.6"`, `A2:A9`, `1/3`),
 * `undefined` where one is left out. Numbers and texts that stand alone are read as the function
 * reads them, so a unit or an engraved mark becomes the number it means; a cell is taken to hold
 * base units and exact f-numbers, as ours do. The result is the function's wherever that has one:
 * what it refuses, and readings still missing, are not looked at.
 */
export function expand(
  definition: AnyDefinition,
  args: readonly (string | undefined)[],
  settings: CallSettings,
): Expansion {
  const { formula, parameters, name } = definition;
  if (typeof formula !== 'string') return { ok: false, reason: formula.none };
  if (args.length > parameters.length && !parameters.at(-1)?.repeats)
    return { ok: false, reason: words.formula.takesAtMost(name, parameters.length) };
  const places = new Map<string, Place>();
  for (const [index, parameter] of parameters.entries()) {
    const given = args.slice(index, parameter.repeats ? undefined : index + 1);
    const written = writeArgument(name, parameter, given, settings);
    if (!written.ok) return written;
    places.set(parameter.name, { text: written.text, range: parameter.range === true });
  }
  return { ok: true, text: insert(formula, places) };
}

/** What stands for a parameter in its formula; empty where it was left out and is nothing then. */
interface Place {
  readonly text: string;
  readonly range: boolean;
}

function writeArgument(
  name: string,
  parameter: Parameter,
  given: readonly (string | undefined)[],
  settings: CallSettings,
): Expansion {
  const fallback = leftOut(parameter, settings);
  const texts = given.filter((text) => text !== undefined);
  if (texts.length === 0 && fallback !== undefined) texts.push(JSON.stringify(fallback));
  if (texts.length === 0 && !parameter.optional)
    return { ok: false, reason: words.formula.needs(name, parameter.name) };
  const written: string[] = [];
  for (const text of texts) {
    const one = writeOne(name, parameter, text, settings);
    if (!one.ok) return one;
    written.push(one.text);
  }
  return { ok: true, text: written.join(', ') };
}

function writeOne(
  name: string,
  parameter: Parameter,
  text: string,
  settings: CallSettings,
): Expansion {
  const tokens = tokensOf(`=${text}`).slice(1);
  const literal = literalOf(tokens);
  if (literal === undefined) {
    const alone = tokens.length === 1 || parameter.range === true;
    return { ok: true, text: alone ? text : `(${text})` };
  }
  const value = readSingle({ name, parameter, settings }, literal);
  if (isError(value)) return { ok: false, reason: value.message };
  if (typeof value === 'object') return { ok: false, reason: words.formula.looksAtUnits(name) };
  const written = typeof value === 'string' ? text : String(value).toUpperCase();
  return { ok: true, text: written.startsWith('-') ? `(${written})` : written };
}

/** A number or a text that stands alone, the number with or without a sign. */
function literalOf(tokens: readonly Token[]): number | string | undefined {
  const [first, second, ...more] = tokens.filter(({ kind }) => kind !== 'blank');
  if (!first || more.length > 0) return undefined;
  if (second)
    return first.text === '-' && second.kind === 'number' ? -Number(second.text) : undefined;
  if (first.kind === 'number') return Number(first.text);
  return first.kind === 'text' ? first.text.slice(1, -1).replaceAll('""', '"') : undefined;
}

/** Parameter names are lower case and functions upper case, so neither is taken for the other. */
function insert(formula: string, places: ReadonlyMap<string, Place>): string {
  const placeOf = (name: string) => {
    const place = places.get(name);
    if (place === undefined) throw new Error(`"${name}" in "${formula}" is no parameter.`);
    return place;
  };
  return formula
    .replace(/\bCOUNT\(([a-z][a-z0-9_]*)\)/g, (whole, name: string) => {
      const { text, range } = placeOf(name);
      // Counting a single argument asks whether it was given, which is known here.
      if (range) return whole;
      return text === '' ? '0' : '1';
    })
    .replace(/\b[a-z][a-z0-9_]*\b/g, (name) => placeOf(name).text || '0');
}
