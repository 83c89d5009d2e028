import { plural } from './plural.ts';

const verbs = {
  '+': 'added,',
  '-': 'taken from each other,',
  '*': 'multiplied,',
  '/': 'divided,',
  '': '',
} as const;

const noVerbs = {
  '+': 'they cannot be added',
  '-': 'one cannot be taken from the other',
  '*': 'they cannot be multiplied',
  '/': 'one cannot be divided by the other',
  '': 'they do not go together',
} as const;

type Sign = keyof typeof verbs;

/** What does not go together in a formula, and how far off a reading is. */
export const check = {
  pointAt: (wanted: string) => `Point it at ${wanted}.`,
  pointAtSuch: (wanted: string, such: string) => `Point it at ${wanted}, such as ${such}.`,
  argument: (call: string, wanted: string, parameter: string, is: string, advice: string) =>
    `${call} wants ${wanted} as ${parameter}; ${is}. ${advice}`,
  levelsInOne: (call: string, part: string, first: string, other: string) =>
    `${call} holds levels against each other, and ${part} holds ${first} and ${other}. Use readings of one kind.`,
  levels: (call: string, first: string, other: string, advice: string) =>
    `${call} holds levels of one kind against each other; ${first} and ${other}. ${advice}`,
  useOneKind: 'Use readings of one kind.',
  exponent: (is: string) =>
    `An exponent is a plain number or a number of stops; ${is}. Check which cell is meant.`,
  bothAlike: (left: string, right: string, kind: string, sign: Sign, advice: string) =>
    `${left} and ${right} are both ${kind}: ${verbs[sign]} they do not give another. ${advice}`,
  notTogether: (left: string, right: string, sign: Sign, advice: string) =>
    `${left} and ${right}: ${noVerbs[sign]}. ${advice}`,
  notCompared: (left: string, right: string, advice: string) =>
    `${left} and ${right}: they cannot be held against each other. ${advice}`,
  checkCells: 'Check which cells are meant.',
  joinedInOne: (call: string, part: string, first: string, other: string) =>
    `${call} wants cells of one kind; ${part} holds ${first} and ${other}. Narrow the range, or move one kind to another column.`,
  chosen: (call: string, first: string, other: string, advice: string) =>
    `${call} gives one kind in every case; ${first} and ${other}. ${advice}`,
  joined: (call: string, first: string, other: string, advice: string) =>
    `${call} takes values of one kind; ${first} and ${other}. ${advice}`,
  totalled: (call: string, kind: string | undefined, part: string, advice: string) =>
    `${call} does not hold for ${kind === undefined ? 'these' : `${kind}s`} (${part}). ${advice}`,
  sought: (call: string, key: string, kind: string, among: string, part: string) =>
    `${call} looks for ${key}, ${kind}, where ${among} stands (${part}). Look for the same kind.`,
  radians: (call: string, is: string, text: string) =>
    `${call} takes radians; ${is} in degrees. Write ${call}(RADIANS(${text})).`,
  result: (given: string, set: string, advice: string) =>
    `The formula comes to ${given}; the cell says ${set}. ${advice}`,
  changeFormula: 'Change the formula, or what the cell measures.',
  target: (given: string, set: string, advice: string) =>
    `The target comes to ${given}; the cell says ${set}. ${advice}`,
  changeTarget: 'Change the target, or what the cell measures.',
  partOfName: 'a part of it',
  partOfFormula: 'a part of the formula',
  is: (part: string, kind: string) => `${part} is ${kind}`,
  insideName: (name: string, sentence: string) => `In the name ${name}: ${sentence}`,
  plainNumber: 'a plain number',
  numberOfFootcandles: 'a plain number of footcandles',
  numberOfFootlamberts: 'a plain number of footlamberts',
  numberPerSecond: 'a number per second',
  amountIn: (units: string) => `an amount in ${units}`,
  levelOfLight: 'a level of light',
  either: (ones: readonly string[]) =>
    [ones.slice(0, -1).join(', '), ones.at(-1) ?? ''].filter(Boolean).join(' or '),
  noLight: 'no light',
  mired: (size: number) => `${String(size)} mired`,
  tooWarm: (amount: string) => `${amount} too warm`,
  tooBlue: (amount: string) => `${amount} too blue`,
  tooGreen: (amount: string) => `green by ${amount}`,
  tooMagenta: (amount: string) => `magenta by ${amount}`,
  full: 'a full',
  half: 'a half',
  quarter: 'a quarter',
  eighth: 'an eighth',
  correction: (name: string) => `${name} 3200-to-5500 correction`,
  nearlyCorrection: (name: string) => `nearly ${name} 3200-to-5500 correction`,
  overCorrection: (name: string) => `just over ${name} 3200-to-5500 correction`,
  targetNoNumber: 'The target is no number.',
  waiting: 'waiting for this reading',
  readingNoNumber: 'This reading is no number.',
  turnOne: (reading: string, target: string) =>
    `The reading is ${reading} and the target ${target}: turn one into the other to compare them.`,
  nothingToCompare: 'There is no light to compare with.',
  notHeld: (what: string) => `${what} is not held against a target.`,
  aNumber: 'A plain number',
  receptors: 'Dome against flat: up to 0.44 stop of the difference is the meter; meter alike.',
  agreement: (points: number, agree: number, off: number, waiting: number) =>
    [
      `${String(agree)} of ${plural(points, 'point')} ${agree === 1 ? 'agrees' : 'agree'}`,
      ...(off > 0 ? [`${String(off)} ${off === 1 ? 'is' : 'are'} off`] : []),
      ...(waiting > 0 ? [`${String(waiting)} ${waiting === 1 ? 'waits' : 'wait'}`] : []),
    ].join(', '),
} as const;
