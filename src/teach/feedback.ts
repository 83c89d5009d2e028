import { writeForPeople } from '../../functions/quantities/write.ts';
import type { WritingSettings } from '../../functions/quantities/settings.ts';
import type { Exercise } from '../book/exercises.ts';
import { words } from '../words/words.ts';
import type { MarkedClass, MarkedLearner } from './mark.ts';
import { judgementWords } from './report.ts';

/** One question on a learner’s feedback sheet. */
export interface Feedback {
  readonly text: string;
  readonly typed: string;
  readonly verdict: string;
  readonly points: string;
  readonly expected: string;
  readonly solution: string | undefined;
}

/** What a learner reads of the own answers, with the worked solution in the own numbers. */
export function feedbackFor(
  { questions }: Exercise,
  { questions: marked }: MarkedLearner,
  writing: WritingSettings,
): readonly Feedback[] {
  return questions.flatMap((question, index) => {
    const answered = marked[index];
    if (!answered) return [];
    const { answer, typed, points, solution } = answered;
    return [
      {
        text: question.text,
        typed,
        verdict: judgementWords(question, answer, answered, writing),
        points: words.teach.pointsOf(points, question.points),
        expected: writeForPeople(answer.quantity ?? 'number', answer.value, writing),
        solution,
      },
    ];
  });
}

/** A learner’s feedback as lines of plain text. */
export function feedbackText(
  title: string,
  { exercise, most }: MarkedClass,
  one: MarkedLearner,
  writing: WritingSettings,
): string {
  const head = [title, `${one.learner}: ${words.teach.pointsOf(one.points, most)}`, ...one.notes];
  const questions = feedbackFor(exercise, one, writing).map((answered, index) => {
    const { text, typed, verdict, points, expected, solution } = answered;
    return [
      `${String(index + 1)}. ${text}`,
      `${words.teach.yourAnswer}: ${typed || words.teach.noneYet} · ${verdict} · ${points}`,
      `${words.teach.expected}: ${expected}`,
      ...(solution === undefined ? [] : [solution]),
    ];
  });
  return [head, ...questions].map((lines) => `${lines.join('\n')}\n`).join('\n');
}
