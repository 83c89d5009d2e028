import { writeForPeople } from '../../functions/quantities/write.ts';
import { exerciseFormula, type Draw, type Exercise, type Tolerance } from '../book/exercises.ts';
import { addressOf, quantityAt } from '../book/look.ts';
import { writingSettings } from '../book/settings.ts';
import type { Document, QuantityName } from '../book/types.ts';
import { words } from '../words/words.ts';
import type { PlannedExercise } from './plan.ts';

/** An exercise as its author would write it, to be changed. */
export function plannedFrom(document: Document, exercise: Exercise): PlannedExercise {
  const { sheet, level, onTheSpot, closeEarns } = exercise;
  const writing = writingSettings(document.settings);
  const address = (at: Exercise['givens'][number]['at']) =>
    addressOf(document, { sheet, ...at }) ?? words.teach.nothing;
  const measured = (at: Exercise['givens'][number]['at']) => quantityAt(document, { sheet, ...at });
  const formula = (json: Exercise['conditions'][number]) => exerciseFormula(document, sheet, json);
  const say = (value: number, quantity: QuantityName | undefined) =>
    writeForPeople(quantity ?? 'number', value, writing);
  const drawText = (draw: Draw, quantity: QuantityName | undefined): string =>
    draw.kind === 'list'
      ? draw.values.map((value) => say(value, quantity)).join('; ')
      : `${say(draw.from, quantity)} to ${say(draw.to, quantity)}, step ${say(draw.step, quantity)}`;
  const toleranceText = ({ kind, by }: Tolerance, quantity: QuantityName | undefined): string => {
    if (kind === 'relative') return `${say(by * 100, 'number')} %`;
    return kind === 'stops' ? `${String(by)} stop` : say(by, quantity);
  };
  return {
    ...{ level, onTheSpot, closeEarns },
    givens: exercise.givens.map(({ at, draw }) => ({
      at: address(at),
      draw: drawText(draw, measured(at)),
    })),
    conditions: exercise.conditions.map(formula),
    questions: exercise.questions.map(
      ({ at, text, tolerance, points, hint, solution, expected, mistakes }) => ({
        ...{ at: address(at), text, points },
        tolerance: toleranceText(tolerance, measured(at)),
        ...(hint !== undefined && { hint }),
        ...(solution && {
          solution: solution.texts
            .map((part, index) => {
              const between = solution.formulas[index];
              return between ? `${part}{${formula(between).slice(1)}}` : part;
            })
            .join(''),
        }),
        expected: formula(expected),
        mistakes: mistakes.map(({ kind, formula: wrong, says }) => ({
          kind,
          formula: formula(wrong),
          ...(says !== undefined && { says }),
        })),
      }),
    ),
  };
}
