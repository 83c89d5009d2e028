import { plural } from './plural.ts';

/** Results over a value that is varied, drawn and in words. */
export const over = {
  title: 'Results over a value',
  what: 'What cells come to for each value of another, as lines: one input, or a family for two.',
  along: 'Value',
  alongHelp: 'A column of the values that were tried.',
  results: 'Results',
  resultsHelp: 'The cells beside it: each column is a line.',
  names: 'Names',
  namesHelp: 'A row above the results.',
  caption: 'What is varied',
  captionHelp: 'The cell that heads the values.',
  now: 'Now',
  nowHelp: 'The value as it stands, marked in the picture.',
  none: 'No row has a value with a number beside it yet.',
  column: (number: number) => `column ${number}`,
  mark: 'now',
  goes: (name: string, first: string, begin: string, last: string, end: string) =>
    `${name}: ${first} at ${begin}, ${last} at ${end}.`,
  most: (name: string, value: string, at: string) => `${name} is highest at ${at}, with ${value}.`,
  least: (name: string, value: string, at: string) => `${name} is lowest at ${at}, with ${value}.`,
  notDrawn: (names: string) => `Not drawn, for want of numbers: ${names}.`,
  further: (count: number) => `${plural(count, 'further line')} not drawn.`,
} as const;
