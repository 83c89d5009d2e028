import { units } from '../../functions/quantities/units.ts';
import type { Finding, Part } from '../engine/index.ts';
import { insteadOf, underTotal, wantedGiven } from './instead.ts';
import { anyOf, isQuantity, oneOf } from './kindWords.ts';
import { words } from '../words/words.ts';

/** Longer parts of a formula are not repeated in a sentence. */
const longest = 40;

type Of<About extends Finding['about']> = Extract<Finding, { about: About }>;
type Sentences = { readonly [About in Finding['about']]: (finding: Of<About>) => string };

const sentences: Sentences = {
  argument({ call, parameter, wanted, given }) {
    const [first] = wanted;
    const name = parameter.replaceAll('_', ' ');
    const all = anyOf(wanted);
    const point =
      first === undefined || wanted.length > 1
        ? words.check.pointAt(all)
        : words.check.pointAtSuch(all, units[first].such);
    const advice = wantedGiven[`${first ?? ''} ${given.kind}`] ?? point;
    return words.check.argument(call, all, name, said(given), advice);
  },

  levels({ call, first, other }) {
    if (first.text === other.text)
      return words.check.levelsInOne(call, named(first), oneOf(first.kind), oneOf(other.kind));
    const advice = insteadOf('+', first.kind, other.kind) ?? words.check.useOneKind;
    return words.check.levels(call, said(first), said(other), advice);
  },

  operation({ operator, left, right }) {
    const advice = insteadOf(operator, left.kind, right.kind) ?? words.check.checkCells;
    if (operator === '^') return words.check.exponent(said(right));
    const sign = signs.find((one) => one === operator) ?? '';
    if (left.kind === right.kind)
      return words.check.bothAlike(named(left), named(right), oneOf(left.kind), sign, advice);
    return operator in comparing
      ? words.check.notCompared(said(left), said(right), advice)
      : words.check.notTogether(said(left), said(right), sign, advice);
  },

  joined({ call, parts: [one, other] }) {
    if (one.text === other.text)
      return words.check.joinedInOne(call, named(one), oneOf(one.kind), oneOf(other.kind));
    const advice = insteadOf('+', one.kind, other.kind) ?? words.check.checkCells;
    return choosing.has(call)
      ? words.check.chosen(call, said(one), said(other), advice)
      : words.check.joined(call, said(one), said(other), advice);
  },

  totalled({ call, given }) {
    const total = call.startsWith('SUM') ? 'SUM' : 'AVERAGE';
    const kind = isQuantity(given.kind) ? units[given.kind].words : undefined;
    const advice = underTotal[`${total} ${given.kind}`] ?? '';
    return words.check.totalled(call, kind, named(given), advice).trim();
  },

  sought: ({ call, key, among }) =>
    words.check.sought(call, named(key), oneOf(key.kind), oneOf(among.kind), named(among)),

  radians: ({ call, given }) => words.check.radians(call, said(given), given.text),

  result: ({ set, given }) =>
    words.check.result(
      oneOf(given),
      units[set].words,
      wantedGiven[`${set} ${given}`] ?? words.check.changeFormula,
    ),

  target: ({ set, given }) =>
    words.check.target(
      oneOf(given),
      units[set].words,
      wantedGiven[`${set} ${given}`] ?? words.check.changeTarget,
    ),
};

const signs = ['+', '-', '*', '/'] as const;
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
  if (text === '') return words.check.partOfName;
  return text.length > longest ? words.check.partOfFormula : text;
}

function said(part: Part): string {
  return words.check.is(named(part), oneOf(part.kind));
}

/** What a finding says to a planner: expected, given, what to do. */
export function sentenceFor(finding: Finding): string {
  const sentence = (sentences[finding.about] as (finding: Finding) => string)(finding);
  const { inside } = finding;
  if (inside === undefined) return sentence[0]?.toUpperCase() + sentence.slice(1);
  return words.check.insideName(inside, sentence);
}
