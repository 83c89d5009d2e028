import { describe, expect, it } from 'vitest';
import { writeForPeople } from '../../../functions/quantities/index.ts';
import { exerciseFormula, type Exercise } from '../../../src/book/exercises.ts';
import { quantityAt } from '../../../src/book/look.ts';
import { writingSettings } from '../../../src/book/settings.ts';
import { agree, type Answer } from '../../../src/teach/judge.ts';
import { exerciseIds } from '../../../src/teach/set/set.ts';
import { handedOut, type HandedClass } from './class.ts';

// A seed and a name are drawn from as one text, so a class of many names is as good as many seeds.
const learners = Array.from({ length: 24 }, (_, index) => `Learner ${String(index + 1)}`);

const secret = 'masked';

/** A hand-out without what is each learner’s own: name, givens, and what is salted. */
function shared(text: string, { sheet, givens }: Exercise): unknown {
  const given = new Set(givens.map(({ at }) => `${at.row} ${at.column}`));
  const own = new Set(['learner', 'tag', 'salt', 'marks']);
  return JSON.parse(text, (key, value: unknown) => {
    if (own.has(key)) return secret;
    if (typeof value !== 'object' || value === null) return value;
    const { at, number } = value as { at?: unknown; number?: unknown };
    if (typeof at === 'string' && number !== undefined && given.has(at))
      return { ...value, number: secret };
    if ('sheets' in value && 'title' in value) {
      expect(JSON.stringify(value)).toContain(sheet);
      return { ...value, title: secret };
    }
    return value;
  });
}

/** Every string in a value. */
const textsIn = (value: unknown): readonly string[] =>
  typeof value === 'string'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(textsIn)
      : [];

/** The ways an answer is written that are accepted, where they are too long to stand somewhere by chance. */
function formsOf({ quantity, value }: Answer, { document }: HandedClass): readonly string[] {
  const settings = writingSettings(document.settings);
  const people = [settings, { ...settings, fNumber: 'tenths' as const }].map((writing) =>
    writeForPeople(quantity ?? 'number', value, writing),
  );
  const all = [...people, String(value), value.toPrecision(4), value.toFixed(2)];
  return [...new Set(all)].filter((form) => form.replace(/\D/g, '').length >= 4);
}

/** What is never told: formulas as they are kept and as they are written, own words on mistakes, solutions. */
function untold(handed: HandedClass): readonly string[] {
  const { document, exercise } = handed;
  const formulas = exercise.questions.flatMap(({ expected, mistakes, solution }) => [
    ...[expected, ...mistakes.map(({ formula }) => formula), ...(solution?.formulas ?? [])],
  ]);
  const written = [...formulas, ...exercise.conditions].map((one) =>
    exerciseFormula(document, exercise.sheet, one),
  );
  const said = exercise.questions.flatMap(({ mistakes, solution }) => [
    ...mistakes.flatMap(({ says }) => says ?? []),
    ...(solution?.texts ?? []),
  ]);
  // A given by itself says nothing of how the answer is come by, nor do two or three words between
  // numbers, which a hint has as well.
  return [
    ...written.map((one) => one.slice(1)).filter((one) => one.length > 8),
    ...said.filter((one) => one.trim().length > 20),
  ];
}

describe.each(exerciseIds)('the hand-outs of %s', (id) => {
  const handed = handedOut(id, learners);
  const { exercise, files, document } = handed;
  const parts = files.map(({ text }) => shared(text, exercise));

  it('are the same but for name, givens and digests: nothing else can tell one answer from another', () => {
    for (const part of parts) expect(part).toEqual(parts[0]);
    for (const index of exercise.questions.keys()) {
      const answers = files.map(({ variant }) => variant.answers[index]?.value.toPrecision(6));
      // As one text stands in all of them, it could give away no more than one of these.
      expect(new Set(answers).size).toBeGreaterThan(2);
    }
  });

  it('hold no formula of an answer, no mistake and no solution', () => {
    const texts = textsIn(parts[0]);
    expect(texts.length).toBeGreaterThan(20);
    const all = untold(handed);
    expect(all.length).toBeGreaterThan(3);
    for (const one of all) expect(texts.filter((text) => text.includes(one))).toEqual([]);
    for (const { text } of files)
      expect(text).not.toMatch(
        /"(expected|mistakes|solution|conditions|draw|tolerance|givens)":[[{]/,
      );
  });

  it('hold no answer in any of the ways it may be written', () => {
    for (const [index, { variant }] of files.entries()) {
      const written = JSON.stringify(parts[index]);
      const forms = variant.answers.flatMap((answer) => formsOf(answer, handed));
      for (const form of forms) expect(written).not.toContain(form);
    }
  });

  it('hold no answer among the givens of its own kind, and only by chance among the others', () => {
    for (const [index, { at, tolerance }] of exercise.questions.entries()) {
      const measured = quantityAt(document, { sheet: exercise.sheet, ...at });
      const met = files.filter(({ variant: { values, answers } }) =>
        exercise.givens.some((given, number) => {
          const [value = 0, answer] = [values[number], answers[index]];
          if (!answer || !agree(tolerance, measured, value, answer.value)) return false;
          const kind = quantityAt(document, { sheet: exercise.sheet, ...given.at });
          expect(kind).not.toBe(measured ?? 'nothing');
          return true;
        }),
      );
      expect(met.length / files.length).toBeLessThan(0.5);
    }
  });
});
