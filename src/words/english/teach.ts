import { plural } from './plural.ts';

/** Exercise sheets: setting, handing out, answering, marking. */
export const teach = {
  nothing: 'nothing',
  noVariant: 'There is nothing to draw.',
  noVariantBecause: (times: number, reason: string) =>
    `No numbers were found that will do, in ${String(times)} draws. ${reason}`,
  conditionFails: (number: number) => `Condition ${String(number)} is not met.`,
  noAnswer: (number: number) => `Question ${String(number)} has no answer with these numbers.`,
  trivial: (number: number) => `The answer to question ${String(number)} stands among the givens.`,
  mistakesAlike: (number: number) =>
    `In question ${String(number)} a mistake cannot be told from the answer or from another one.`,
  makeExercise: 'Make the sheet an exercise',
  removeExercise: 'Remove the exercise',
  noExercise: 'There is no exercise on this sheet.',
  noCell: (address: string) => `“${address}” is no cell. Write it like B4.`,
  cellTwice: (address: string) => `${address} is named twice.`,
  noDraw: (text: string) =>
    `“${text}” says nothing to draw from. Write a list, f/2; f/2.8; f/4, or a range, 200 lx to 2000 lx, step 100 lx.`,
  noText: (address: string) => `The question for ${address} has no text.`,
  noPoints: (address: string) => `The question for ${address} wants points, zero or more.`,
  noQuestions: 'An exercise asks at least one question.',
  noLearners: 'The list names nobody.',
  learnerTwice: (name: string) => `${name} stands in the list twice. Tell the two apart.`,
  readsElsewhere:
    'Formulas of this sheet read names or other sheets, and a hand-out is one sheet alone.',
  givesAway: (address: string, number: number) =>
    `${address} shows the answer to question ${String(number)}. Take its formula off the sheet.`,
  zipCut: (count: number) =>
    `The zip file is damaged or empty. ${plural(count, 'file')} could be read of it.`,
  noBook: 'No book of ours.',
  noHandout: 'A book, but no hand-out.',
  otherClass: (title: string) => `A hand-out of ${title} for another class or of another seed.`,
  altered: (name: string) =>
    `Says that it is ${name}’s, and no hand-out of this class is: the name was altered, or it is another class’s.`,
  counted: (name: string) => `Counts for ${name}.`,
  renamed: (name: string) => `Counts for ${name}, though the file has another name now.`,
  sameAs: (path: string) => `The same as ${path}, to the letter.`,
  otherBy: (name: string, path: string) =>
    `Another one by ${name}. The better one counts: ${path}.`,
  givensChanged: 'The givens were changed in the file. It was marked with those handed out.',
  mistakes: {
    forgotSquare: 'forgot to square',
    densityForStops: 'took density for stops',
    wrongSide: 'took the wrong side of the ratio',
    luxForFootcandles: 'took lux for footcandles',
    wrongSign: 'has the sign the wrong way',
    averagedKelvin: 'averaged kelvin',
    fForT: 'took f for T',
    domeForFlat: 'used the dome where flat was asked',
    other: 'another slip',
  },
  tooHigh: (amount: string) => `${amount} too high`,
  tooLow: (amount: string) => `${amount} too low`,
  because: (mistake: string) => `not yet: ${mistake}`,
  closeBy: (far: string) => `close: ${far}`,
  states: { right: 'right', close: 'close', notYet: 'not yet', blank: 'blank' },
  learner: 'Learner',
  points: 'Points',
  of: 'Of',
  notes: 'Notes',
  pointsFor: (number: number) => `${String(number)} points`,
  answerTo: (number: number) => `${String(number)} answer`,
  verdictOn: (number: number) => `${String(number)} verdict`,
  nothingReturned: 'Nothing came back.',
  question: 'Question',
  likely: 'Likely mistake',
  typed: 'Typed',
  learners: 'Learners',
  unknown: 'none that is known',
  file: 'File',
  fate: 'What became of it',
  says: 'Because',
  fates: {
    counted: 'counted',
    renamed: 'counted, renamed',
    same: 'duplicate',
    other: 'a second one',
    altered: 'altered',
    damaged: 'damaged',
    foreign: 'foreign',
  },
  marks: 'Marks',
  wrongAnswers: 'Wrong answers',
  files: 'Files',
  pointsOf: (points: number, most: number) =>
    `${String(Math.round(points * 100) / 100)} of ${plural(most, 'point')}`,
  handOut: 'Hand out to a class',
  expected: 'Expected',
  wantsClass: 'CLASS.csv and SHEET are wanted.',
  severalExercises: (names: string) =>
    `There are several exercises; name one of ${names} by --sheet.`,
  noneHere: (path: string, names: string) =>
    `${path} holds no exercise, and none of ours is called so: ${names}.`,
  noClass: (path: string) => `${path} was handed out to no class.`,
  wantsKey: 'KEY.json and at least one returned file or folder are wanted.',
  aFolder: 'a folder',
  aSeed: 'a seed, any text',
  written: (count: number, folder: string) =>
    `${plural(count, 'hand-out')} in ${folder}/handouts, the key in ${folder}/key.`,
  alike: (one: string, other: string) =>
    `${one} and ${other} stand beside each other in the list and have the same numbers. Another seed parts them.`,
  handoutsHelp: {
    usage: 'CLASS.csv SHEET --seed N --out DIR [--sheet NAME]',
    summary:
      'Writes a book for each learner of a list (a column Name, or the first one) and, apart from them, the key. SHEET is a book with an exercise or the name of one of ours.',
  },
  markHelp: {
    usage: 'KEY.json RETURNED… [--csv]',
    summary:
      'Marks returned books: files, folders and zip files, by the key alone. Every file is accounted for. With --csv the marks come as a table.',
  },
  learnerLine: (name: string, marks: string) => `${name}: ${marks}`,
  groupLine: (number: number, mistake: string, typed: string, who: string) =>
    `Question ${String(number)}, likely mistake: ${mistake} (${typed}): ${who}`,
} as const;
