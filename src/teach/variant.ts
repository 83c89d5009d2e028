import { isError } from '../../functions/values.ts';
import type { Class, Draw, Exercise, Question } from '../book/exercises.ts';
import { quantityAt } from '../book/look.ts';
import { sha256 } from '../files/photometric/sha256.ts';
import { words } from '../words/words.ts';
import { agree, type Answer } from './judge.ts';
import { Undeliverable } from './undeliverable.ts';
import type { Workings } from './workings.ts';

/** One learner’s numbers and what the questions come to with them. */
export interface Variant {
  /** Of the givens, in their order, in base units. */
  readonly values: readonly number[];
  /** Of the questions, in their order. */
  readonly answers: readonly Answer[];
  /** As whoever stands before in the list has it: nothing else was there to draw. */
  readonly alike: boolean;
}

export type Drawn = ({ readonly ok: true } & Variant) | { readonly ok: false; reason: string };

/** How often numbers are drawn again before it is said that none will do. */
const mostDraws = 400;

/** The same name, however it is spelled out: composed letters, one blank between words, no case. */
export const learnerKey = (name: string): string =>
  name.normalize('NFC').trim().replace(/\s+/g, ' ').toLowerCase();

/**
 * Numbers by seed and name alone. A draw is SHA-256 of `SEED / LEARNER / ATTEMPT / GIVEN` in UTF-8,
 * its first 52 bits over 2^52 taken as a share of what there is to choose from; the attempt counts up
 * from 0 until the numbers will do. So anyone can draw them again, in any language of programs. Where
 * there is a neighbour, numbers or answers like the neighbour’s will not do as long as others are found.
 */
export function variantOf(
  exercise: Exercise,
  workings: Workings,
  seed: string,
  learner: string,
  neighbour?: Variant,
): Drawn {
  let reason: string = words.teach.noVariant;
  let copied: Variant | undefined;
  for (let attempt = 0; attempt < mostDraws; attempt += 1) {
    const values = exercise.givens.map(({ draw }, given) =>
      drawn(draw, shareOf([seed, learnerKey(learner), attempt, given].join(' / '))),
    );
    if (copied && String(values) === String(neighbour?.values)) continue;
    const tried = answersFor(exercise, workings, values);
    if (!tried.ok) {
      reason = tried.reason;
      continue;
    }
    const { answers } = tried;
    if (!neighbour || !isAlike(exercise, neighbour, { values, answers }))
      return { ok: true, values, answers, alike: false };
    copied ??= { values, answers, alike: true };
  }
  if (!copied) return { ok: false, reason: words.teach.noVariantBecause(mostDraws, reason) };
  workings.put(copied.values);
  return { ok: true, ...copied };
}

/**
 * The numbers of a class in the order of its list: nobody has those of whoever stands before, nor the
 * same answers. Where no numbers will do, the class cannot be handed out to.
 */
export function* drawnFor(
  exercise: Exercise,
  workings: Workings,
  { seed, learners }: Pick<Class, 'seed' | 'learners'>,
): Generator<readonly [learner: string, Variant], void> {
  let neighbour: Variant | undefined;
  for (const learner of learners) {
    const variant = variantOf(exercise, workings, seed, learner, neighbour);
    if (!variant.ok) throw new Undeliverable(variant.reason);
    neighbour = variant;
    yield [learner, variant];
  }
}

/** The same numbers, or the same answer to every question. */
const isAlike = (
  { questions }: Exercise,
  one: Variant,
  other: Pick<Variant, 'values' | 'answers'>,
): boolean =>
  String(one.values) === String(other.values) ||
  questions.every(({ tolerance }, index) => {
    const [mine, yours] = [one.answers[index], other.answers[index]];
    return mine && yours && agree(tolerance, mine.quantity, mine.value, yours.value);
  });

const shareOf = (text: string): number => Number.parseInt(sha256(text).slice(0, 13), 16) / 2 ** 52;

function drawn(draw: Draw, share: number): number {
  if (draw.kind === 'list') return draw.values[Math.floor(share * draw.values.length)] ?? 0;
  const { from, to, step } = draw;
  const steps = Math.floor((to - from) / step + 1e-9) + 1;
  // Rounded so that 0.1 + 2 × 0.1 is the 0.3 that a person would write.
  return Number((from + Math.floor(share * steps) * step).toPrecision(12));
}

type Answered =
  | { readonly ok: true; readonly answers: readonly Answer[] }
  | { readonly ok: false; readonly reason: string };

/** What the questions come to with these givens; a reason where they are trivial or impossible. */
export function answersFor(
  exercise: Exercise,
  workings: Workings,
  values: readonly number[],
): Answered {
  workings.put(values);
  for (const [index, condition] of exercise.conditions.entries())
    if (workings.work(condition).value !== true)
      return { ok: false, reason: words.teach.conditionFails(index + 1) };
  const answers: Answer[] = [];
  for (const [index, question] of exercise.questions.entries()) {
    const answer = answerTo(exercise, workings, question);
    const reason =
      answer === undefined
        ? words.teach.noAnswer(index + 1)
        : faultOf(exercise, workings, values, question, answer, index + 1);
    if (reason !== undefined || !answer) return { ok: false, reason: reason ?? '' };
    answers.push(answer);
  }
  return { ok: true, answers };
}

function answerTo(
  { sheet }: Exercise,
  workings: Workings,
  { at, expected, mistakes }: Question,
): Answer | undefined {
  const value = numberOf(workings.work(expected).value);
  if (value === undefined) return undefined;
  return {
    quantity: quantityAt(workings.document, { sheet, ...at }),
    value,
    mistakes: mistakes.flatMap(({ kind, formula, says }) => {
      const wrong = numberOf(workings.work(formula).value);
      return wrong === undefined
        ? []
        : [{ kind, value: wrong, ...(says !== undefined && { says }) }];
    }),
  };
}

const numberOf = (value: unknown): number | undefined =>
  typeof value === 'number' && Number.isFinite(value) && !isError(value) ? value : undefined;

/** Trivial: the answer stands among the givens. Useless: a mistake that cannot be told from the answer. */
function faultOf(
  { sheet, givens }: Exercise,
  { document }: Workings,
  values: readonly number[],
  { tolerance }: Question,
  { quantity, value, mistakes }: Answer,
  number: number,
): string | undefined {
  const copied = givens.some(
    ({ at }, index) =>
      quantity !== undefined &&
      quantityAt(document, { sheet, ...at }) === quantity &&
      agree(tolerance, quantity, values[index] ?? Number.NaN, value),
  );
  if (copied) return words.teach.trivial(number);
  const all = [value, ...mistakes.map((one) => one.value)];
  const alike = all.some((one, index) =>
    all.slice(0, index).some((other) => agree(tolerance, quantity, one, other)),
  );
  return alike ? words.teach.mistakesAlike(number) : undefined;
}
