import { given, heading, numberHeading, words as text } from '../../../templates/cells.ts';
import type { PlannedCell, PlannedSheet } from '../../../templates/plan.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import type { Exercise } from '../../book/exercises.ts';
import type { PlannedExercise, PlannedMistake, PlannedQuestion } from '../plan.ts';

/** A given: formulas name it with a `$` before its name. */
export interface SetGiven {
  readonly name: string;
  readonly label: string;
  readonly quantity: QuantityName;
  /** As it stands on the teacher’s own sheet. */
  readonly typed: string;
  /** `f/2; f/2.8; f/4` or `200 lx to 2000 lx, step 100 lx`. */
  readonly draw: string;
}

export interface SetQuestion extends Omit<PlannedQuestion, 'at' | 'hint' | 'solution'> {
  /** What the answer measures. */
  readonly quantity: QuantityName;
  readonly hint: string;
  readonly solution: string;
}

/** An exercise of ours as data: the sheet is laid out from it. */
export interface SetExercise {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  readonly level: Exercise['level'];
  readonly onTheSpot: boolean;
  readonly givens: readonly SetGiven[];
  readonly conditions: readonly string[];
  readonly questions: readonly SetQuestion[];
  /** Further cells, right of the questions, from column D on. */
  readonly beside?: Readonly<Record<string, PlannedCell>>;
  /** Lines under the questions: what holds, and the usual cautions. */
  readonly remarks?: readonly string[];
}

const firstGiven = 2;

/** The sheet of an exercise, and the exercise in its addresses. */
export function layOut(exercise: SetExercise): {
  readonly sheet: PlannedSheet;
  readonly exercise: PlannedExercise;
} {
  const { id, title, purpose, level, onTheSpot, givens, questions } = exercise;
  const firstQuestion = firstGiven + givens.length + 2;
  const address = new Map(givens.map(({ name }, index) => [name, `B${firstGiven + index}`]));
  const placed = (formula: string): string =>
    formula.replace(/\$([a-z][A-Za-z]*)/g, (whole, name: string) => address.get(name) ?? whole);
  const cells: Record<string, PlannedCell> = {
    A1: heading('Given'),
    [`A${firstQuestion - 1}`]: heading('Questions'),
    [`B${firstQuestion - 1}`]: numberHeading('Your answer'),
    ...exercise.beside,
  };
  givens.forEach(({ label, typed, quantity }, index) => {
    cells[`A${firstGiven + index}`] = text(label);
    cells[`B${firstGiven + index}`] = given(typed, quantity);
  });
  questions.forEach((question, index) => {
    cells[`A${firstQuestion + index}`] = text(`${index + 1}. ${question.text}`);
    cells[`B${firstQuestion + index}`] = { role: 'answer', quantity: question.quantity };
  });
  exercise.remarks?.forEach((line, index) => {
    cells[`A${firstQuestion + questions.length + 1 + index}`] = text(line);
  });
  for (const [at, cell] of Object.entries(cells))
    if (cell.typed?.startsWith('=')) cells[at] = { ...cell, typed: placed(cell.typed) };
  return {
    sheet: {
      ...{ name: title, title, purpose, phase: 'teach', template: `exercise-${id}` },
      widths: [520, 150, 24],
      cells,
    },
    exercise: {
      ...{ level, onTheSpot, closeEarns: 0.5 },
      givens: givens.map(({ draw }, index) => ({ at: `B${firstGiven + index}`, draw })),
      conditions: exercise.conditions.map(placed),
      questions: questions.map(({ quantity: _quantity, ...question }, index) => ({
        ...question,
        at: `B${firstQuestion + index}`,
        expected: placed(question.expected),
        solution: placed(question.solution),
        mistakes: question.mistakes.map((mistake): PlannedMistake => ({
          ...mistake,
          formula: placed(mistake.formula),
        })),
      })),
    },
  };
}

/** Marks that are engraved, and the thirds between them. */
export const wholeMarks = 'f/1.4; f/2; f/2.8; f/4; f/5.6; f/8; f/11; f/16; f/22';
export const thirdMarks = [1.4, 2, 2.8, 4, 5.6, 8, 11, 16]
  .flatMap((mark) => [`f/${mark}`, `f/${mark} 1/3`, `f/${mark} 2/3`])
  .join('; ');
/** Speeds that cameras are set to. */
export const speeds =
  'ISO 100; ISO 200; ISO 320; ISO 400; ISO 500; ISO 640; ISO 800; ISO 1000; ISO 1250; ISO 1600';
/** Exposure times of pictures at usual rates. */
export const times = '1/24 s; 1/25 s; 1/30 s; 1/48 s; 1/50 s; 1/60 s; 1/96 s; 1/100 s; 1/120 s';
