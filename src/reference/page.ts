import {
  families,
  type AnyDefinition,
  type Family,
  type Parameter,
  type ParameterKind,
} from '../../functions/define.ts';
import { units } from '../../functions/quantities/units.ts';
import { sources, type Source, type SourceName } from '../../functions/sources.ts';
import { writeExample, type WrittenExample } from './examples.ts';
import { signatureOf, whenLeftOut } from './signature.ts';
import { words } from '../words/words.ts';

/** What the reference says of one function, as data: the written page and the one in the app show it alike. */
export interface FunctionPage {
  readonly name: string;
  readonly summary: string;
  readonly job: string;
  readonly signature: string;
  readonly search: readonly string[];
  readonly parameters: readonly ParameterLine[];
  /** What comes out: "stops", "illuminance, in lx". */
  readonly result: string;
  /** How it is worked out; undefined where words say it all. */
  readonly equation?: string;
  /** Whether the equation can be typed into any spreadsheet, or why it cannot. */
  readonly plain: { readonly expands: true } | { readonly expands: false; readonly reason: string };
  readonly examples: readonly WrittenExample[];
  readonly limits: string;
  readonly sources: readonly { readonly from: SourceName; readonly at?: string }[];
  readonly alike: readonly string[];
}

export interface ParameterLine {
  readonly name: string;
  readonly help: string;
  /** The quantity and the unit in which a bare number is taken. */
  readonly takes: string;
  /** Which values it may have, in words; empty where any will do. */
  readonly allowed: string;
  /** What a standard recommends, where more is in use. */
  readonly usual?: string;
  /** What it is when it is left out. */
  readonly leftOut?: string;
}

/** All functions of one family, under the heading that people know. */
export interface FamilyPage {
  readonly family: Family;
  readonly title: string;
  readonly functions: readonly FunctionPage[];
}

const titles: Readonly<Record<Family, string>> = {
  stops: words.reference.familyStops,
  exposure: words.reference.familyExposure,
  distance: words.reference.familyDistance,
  fixture: words.reference.familyFixtures,
  filter: words.reference.familyFilters,
  colour: words.reference.familyColour,
  power: words.reference.familyPower,
  time: words.reference.familyFlicker,
};

/** The heading of a family. */
export const titleOf = (family: Family): string => titles[family];

/** The whole reference: every family that has functions. */
export function referenceOf(catalogue: readonly AnyDefinition[]): readonly FamilyPage[] {
  return families
    .map((family) => ({
      family,
      title: titleOf(family),
      functions: catalogue.filter((one) => one.family === family).map(pageOf),
    }))
    .filter(({ functions }) => functions.length > 0);
}

/** What the pages cite, each once, in the order of the alphabet. */
export function bibliographyOf(
  pages: readonly FunctionPage[],
): readonly (Source & { readonly name: SourceName })[] {
  const cited = pages.flatMap((page) => [
    ...page.sources.map(({ from }) => from),
    ...page.examples.flatMap(({ source }) => source ?? []),
  ]);
  return (Object.keys(sources) as SourceName[])
    .filter((name) => cited.includes(name))
    .sort()
    .map((name) => ({ name, ...sources[name] }));
}

export function pageOf(definition: AnyDefinition): FunctionPage {
  const { name, summary, job, search, parameters, formula, examples, limits, alike } = definition;
  const plain = typeof formula === 'string';
  const equation = plain ? formula : formula.equation;
  return {
    ...{ name, summary, job, search, limits, alike },
    signature: signatureOf(definition),
    parameters: parameters.map(lineOf),
    result: resultWords(definition),
    ...(equation !== undefined && { equation }),
    plain: plain ? { expands: true } : { expands: false, reason: formula.none },
    examples: examples.map((example) => writeExample(definition, example)),
    sources: definition.sources,
  };
}

function lineOf(parameter: Parameter): ParameterLine {
  const { name, help, domain, usual } = parameter;
  const leftOut = whenLeftOut(parameter);
  return {
    ...{ name, help },
    takes: takenWords(parameter),
    allowed:
      domain === undefined || domain.says === words.reference.anyNumber ? '' : inPrint(domain.says),
    ...(usual && { usual: `${usual.says} (${usual.source})` }),
    ...(leftOut !== undefined && { leftOut }),
  };
}

const inPrint = (says: string): string => says.replaceAll(/(?<!\S)-(?=\d)/g, '−');

const openings: Partial<Record<ParameterKind, string>> = {
  level: words.reference.anyLevel,
  receptor: words.reference.aReceptor,
  anything: words.reference.anything,
  table: words.reference.aTable,
};

function takenWords({ quantity, kinds, range, repeats }: Parameter): string {
  const one = kinds
    ? kinds.map(quantityWords).join(words.reference.either)
    : (openings[quantity] ?? quantityWords(quantity as keyof typeof units));
  if (!range) return one;
  return repeats ? words.reference.rangeOrList(one) : words.reference.rangeOf(one);
}

/** A sign such as × or : 1 is no unit to name, nor is one that the words name already. */
function quantityWords(quantity: keyof typeof units): string {
  const { words: name, base } = units[quantity];
  const named = name.split(' ').includes(base);
  return /^[a-z°µ]/i.test(base) && !named ? words.reference.inUnit(name, base) : name;
}

function resultWords({ result }: AnyDefinition): string {
  return typeof result === 'string' ? quantityWords(result) : words.reference.as(result.as);
}
