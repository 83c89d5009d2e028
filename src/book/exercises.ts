import * as v from 'valibot';
import { formulaFromJson, type FormulaJson } from '../formula/codec.ts';
import { finite, id, quantity } from './form/schema.ts';
import { formulaText } from './look.ts';
import type { Document, Id, ShelfItem } from './types.ts';

const text = (most: number) => v.pipe(v.string(), v.maxLength(most));
const positive = v.pipe(finite, v.gtValue(0));
const zeroOrMore = v.pipe(finite, v.minValue(0));
const count = v.pipe(zeroOrMore, v.integer());
const listed = <T extends v.GenericSchema>(item: T, most = 100) =>
  v.pipe(v.array(item), v.maxLength(most));

/** A formula with the ids of the lines that it reads, so that it follows them. */
const formula = v.strictObject({ pieces: v.array(v.string()), references: v.array(v.string()) });

/** A cell of the exercise’s sheet. */
const at = v.strictObject({ row: id, column: id });

/** Where a given comes from, in the base unit of its cell. */
const draw = v.variant('kind', [
  v.strictObject({ kind: v.literal('list'), values: v.pipe(listed(finite, 500), v.minLength(1)) }),
  v.strictObject({ kind: v.literal('range'), from: finite, to: finite, step: positive }),
]);

/** How far an answer may be off: in the base unit, as a share of the answer, in stops of light. */
const tolerance = v.strictObject({
  kind: v.picklist(['absolute', 'relative', 'stops']),
  by: zeroOrMore,
});

/** What goes wrong most often. What is wrong otherwise the teacher says in own words. */
export const mistakeKinds = [
  'forgotSquare',
  'densityForStops',
  'wrongSide',
  'luxForFootcandles',
  'wrongSign',
  'averagedKelvin',
  'fForT',
  'domeForFlat',
  'other',
] as const;

const mistake = v.strictObject({
  kind: v.picklist(mistakeKinds),
  /** What comes out when it is made. */
  formula,
  says: v.exactOptional(text(300)),
});

/** Texts with formulas between them: one text more than there are formulas. */
const solution = v.strictObject({ texts: listed(text(2_000)), formulas: listed(formula) });

const asked = {
  id,
  /** The answer cell; what it measures is the cell’s own quantity. */
  at,
  text: text(1_000),
  points: zeroOrMore,
  hint: v.exactOptional(text(1_000)),
};

const question = v.strictObject({
  ...asked,
  tolerance,
  expected: formula,
  mistakes: listed(mistake, 20),
  solution: v.exactOptional(solution),
});

const exercise = v.strictObject({
  id,
  kind: v.literal('exercise'),
  sheet: id,
  level: v.picklist([1, 2, 3]),
  /** Learners may check discrete answers while they work. */
  onTheSpot: v.boolean(),
  /** The share of the points that an answer earns which is close. */
  closeEarns: v.pipe(zeroOrMore, v.maxValue(1)),
  givens: listed(v.strictObject({ at, draw })),
  /** Formulas that are all true in every variant. */
  conditions: listed(formula),
  questions: v.pipe(listed(question), v.minLength(1)),
});

const learner = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(120));
const seed = v.pipe(v.string(), v.maxLength(60));

/** A class that an exercise was handed out to: with the exercise itself all that marking needs. */
const classOf = v.strictObject({
  id,
  kind: v.literal('class'),
  exercise: id,
  seed,
  /** Unguessable: hand-outs are told from forged ones by it. */
  salt: text(100),
  learners: listed(learner, 2_000),
});

/** A check without the answer: digests of the marks that count, and how far off each is. */
const check = v.strictObject({
  salt: text(100),
  parts: v.picklist([1, 2, 3]),
  marks: listed(v.strictObject({ digest: text(64), off: finite })),
});

/** What one learner gets: the questions without any answer. */
const handout = v.strictObject({
  id,
  kind: v.literal('handout'),
  sheet: id,
  exercise: id,
  title: text(200),
  learner,
  seed,
  tag: text(64),
  level: v.picklist([1, 2, 3]),
  questions: listed(
    v.strictObject({
      ...asked,
      quantity: v.exactOptional(quantity),
      check: v.exactOptional(check),
    }),
  ),
  /** How often each question was checked, and how often its hint was asked for. */
  tries: v.record(v.string(), count),
});

/** An exercise on a sheet of the teacher’s book. */
export type Exercise = v.InferOutput<typeof exercise>;
export type Question = Exercise['questions'][number];
export type Given = Exercise['givens'][number];
export type Draw = Given['draw'];
export type Tolerance = Question['tolerance'];
export type Mistake = Question['mistakes'][number];
export type MistakeKind = Mistake['kind'];
export type Solution = NonNullable<Question['solution']>;
export type Class = v.InferOutput<typeof classOf>;
export type Handout = v.InferOutput<typeof handout>;
export type HandoutQuestion = Handout['questions'][number];
export type Check = NonNullable<HandoutQuestion['check']>;

type OnShelf = Pick<Document, 'shelf'>;

/** An item that is none of these as this version knows them is kept as it is. */
const ofKind =
  <T extends v.GenericSchema>(schema: T) =>
  (document: OnShelf): readonly v.InferOutput<T>[] =>
    document.shelf('exercises').items.flatMap((item: ShelfItem) => {
      const parsed = v.safeParse(schema, item);
      return parsed.success ? [parsed.output] : [];
    });

export const exercisesOf = ofKind(exercise);
export const classesOf = ofKind(classOf);
export const handoutsOf = ofKind(handout);

export const exerciseOn = (document: OnShelf, sheet: Id): Exercise | undefined =>
  exercisesOf(document).find((one) => one.sheet === sheet);

export const handoutOn = (document: OnShelf, sheet: Id): Handout | undefined =>
  handoutsOf(document).find((one) => one.sheet === sheet);

/** A formula of an exercise as it is written on its sheet now. */
export function exerciseFormula(document: Document, sheet: Id, json: FormulaJson): string {
  const read = formulaFromJson(json);
  return read ? formulaText(document, read, sheet) : '=#REF!';
}
