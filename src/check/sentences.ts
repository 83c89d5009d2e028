import { units } from '../../functions/quantities/units.ts';
import type { Finding, Part } from '../engine/index.ts';
import { insteadOf, underTotal, wantedGiven } from './instead.ts';
import { anyOf, isQuantity, oneOf } from './kindWords.ts';

/** Longer parts of a formula are not repeated in a sentence. */
const longest = 40;

type Of<About extends Finding['about']> = Extract<Finding, { about: About }>;
type Sentences = { readonly [About in Finding['about']]: (finding: Of<About>) => string };

const sentences: Sentences = {
  argument({ call, parameter, wanted, given }) {
    const [first] = wanted;
    const name = parameter.replaceAll('_', ' ');
    const such = first === undefined || wanted.length > 1 ? '' : `, such as ${units[first].such}`;
    const advice =
      wantedGiven[`${first ?? ''} ${given.kind}`] ?? `Point it at ${anyOf(wanted)}${such}.`;
    return `${call} wants ${anyOf(wanted)} as ${name}; ${said(given)}. ${advice}`;
  },

  levels({ call, first, other }) {
    if (first.text === other.text)
      return `${call} holds levels against each other, and ${named(first)} holds ${oneOf(first.kind)} and ${oneOf(other.kind)}. Use readings of one kind.`;
    return `${call} holds levels of one kind against each other; ${said(first)} and ${said(other)}. ${insteadOf('+', first.kind, other.kind) ?? 'Use readings of one kind.'}`;
  },

  operation({ operator, left, right }) {
    const advice = insteadOf(operator, left.kind, right.kind);
    if (operator === '^')
      return `An exponent is a plain number or a number of stops; ${said(right)}. Check which cell is meant.`;
    if (left.kind === right.kind)
      return `${both(left, right)}: ${verbs[operator] ?? ''} they do not give another. ${advice ?? 'Check which cells are meant.'}`;
    const fault =
      operator in comparing ? 'they cannot be held against each other' : noVerbs[operator];
    return `${said(left)} and ${said(right)}: ${fault ?? 'they do not go together'}. ${advice ?? 'Check which cells are meant.'}`;
  },

  joined({ call, parts: [one, other] }) {
    const kinds = `${oneOf(one.kind)} and ${oneOf(other.kind)}`;
    if (one.text === other.text)
      return `${call} wants cells of one kind; ${named(one)} holds ${kinds}. Narrow the range, or move one kind to another column.`;
    const fault = choosing.has(call)
      ? `${call} gives one kind in every case`
      : `${call} takes values of one kind`;
    return `${fault}; ${said(one)} and ${said(other)}. ${insteadOf('+', one.kind, other.kind) ?? 'Check which cells are meant.'}`;
  },

  totalled({ call, given }) {
    const total = call.startsWith('SUM') ? 'SUM' : 'AVERAGE';
    const many = isQuantity(given.kind) ? plural(units[given.kind].words) : 'these';
    return `${call} does not hold for ${many} (${named(given)}). ${underTotal[`${total} ${given.kind}`] ?? ''}`.trim();
  },

  sought: ({ call, key, among }) =>
    `${call} looks for ${named(key)}, ${oneOf(key.kind)}, where ${oneOf(among.kind)} stands (${named(among)}). Look for the same kind.`,

  radians: ({ call, given }) =>
    `${call} takes radians; ${said(given)} in degrees. Write ${call}(RADIANS(${given.text})).`,

  result: ({ set, given }) =>
    `The formula comes to ${oneOf(given)}; the cell says ${units[set].words}. ${wantedGiven[`${set} ${given}`] ?? 'Change the formula, or what the cell measures.'}`,

  target: ({ set, given }) =>
    `The target comes to ${oneOf(given)}; the cell says ${units[set].words}. ${wantedGiven[`${set} ${given}`] ?? 'Change the target, or what the cell measures.'}`,
};

const verbs: Readonly<Record<string, string>> = {
  '+': 'added,',
  '-': 'taken from each other,',
  '*': 'multiplied,',
  '/': 'divided,',
};
const noVerbs: Readonly<Record<string, string>> = {
  '+': 'they cannot be added',
  '-': 'one cannot be taken from the other',
  '*': 'they cannot be multiplied',
  '/': 'one cannot be divided by the other',
};
const comparing = { '=': 1, '<>': 1, '<': 1, '>': 1, '<=': 1, '>=': 1 };
const choosing: ReadonlySet<string> = new Set([
  'IF',
  'IFS',
  'IFERROR',
  'IFNA',
  'CHOOSE',
  'XLOOKUP',
]);

/** The part as written, or words for it where it is long or stands inside a name. */
function named({ text }: Part): string {
  if (text === '') return 'a part of it';
  return text.length > longest ? 'a part of the formula' : text;
}

function said(part: Part): string {
  return `${named(part)} is ${oneOf(part.kind)}`;
}

function both(left: Part, right: Part): string {
  return `${named(left)} and ${named(right)} are both ${oneOf(left.kind)}`;
}

function plural(words: string): string {
  return words === 'mired value' ? 'mired values' : `${words}s`;
}

/** What a finding says to a planner: expected, given, what to do. */
export function sentenceFor(finding: Finding): string {
  const sentence = (sentences[finding.about] as (finding: Finding) => string)(finding);
  const { inside } = finding;
  if (inside === undefined) return sentence[0]?.toUpperCase() + sentence.slice(1);
  return `In the name ${inside}: ${sentence}`;
}
