import { describe, expect, it } from 'vitest';
import { exercisesOf } from '../../../src/book/exercises.ts';
import { judge } from '../../../src/teach/judge.ts';
import { exerciseSet, bookOf } from '../../../src/teach/set/set.ts';
import { variantOf, type Variant } from '../../../src/teach/variant.ts';
import { workingsOf } from '../../../src/teach/workings.ts';
import { countingMeans } from '../engine/support/openBook.ts';

const seeds = Array.from({ length: 200 }, (_, index) => String(index + 1));

function only<T>(list: readonly T[]): T {
  const [one] = list;
  if (one === undefined) throw new Error('There is none.');
  return one;
}

describe.each(exerciseSet)('$title', (planned) => {
  const document = bookOf(planned, countingMeans());
  const exercise = only(exercisesOf(document));

  it('has 200 seeds that can be solved, no two neighbours alike, each mistake told by its name', () => {
    const workings = workingsOf(document, exercise);
    let before: Variant | undefined;
    for (const seed of seeds) {
      const drawn = variantOf(exercise, workings, seed, 'Mira Holm', before);
      if (!drawn.ok) throw new Error(`${seed}: ${drawn.reason}`);
      expect(drawn.alike, seed).toBe(false);
      expect(String(drawn.values), seed).not.toBe(String(before?.values));
      before = drawn;
      exercise.questions.forEach((question, index) => {
        const answer = drawn.answers[index];
        if (!answer) throw new Error('No answer.');
        expect(Number.isFinite(answer.value)).toBe(true);
        expect(judge(question, answer, answer.value).state).toBe('right');
        expect(answer.mistakes).toHaveLength(question.mistakes.length);
        for (const mistake of answer.mistakes)
          expect(judge(question, answer, mistake.value).mistake, mistake.kind).toBe(mistake);
      });
    }
    workings.close();
  });

  it('asks in lines that fit their cells', () => {
    for (const { text } of planned.questions) expect(text.length).toBeLessThan(76);
    for (const { label } of planned.givens) expect(label.length).toBeLessThan(60);
    expect(planned.title.length).toBeLessThan(32);
  });
});
