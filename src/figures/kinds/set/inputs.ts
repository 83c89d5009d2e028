import { rigColumns } from '../../../../functions/fixture/rigColumns.ts';
import type { Input, Option } from '../../figure.ts';
import { words } from '../../../words/words.ts';

/** What a picture of the set is drawn from, whichever way it is looked at. */
export const setInputs: readonly Input[] = [
  {
    name: 'rig',
    words: words.set.rig,
    help: words.set.rigHelp,
    shape: 'table',
    wide: rigColumns.length,
    captions: [/^fixture/i],
  },
  {
    name: 'points',
    words: words.set.points,
    help: words.set.pointsHelp,
    shape: 'table',
    wide: 6,
    captions: [/^point/i, /^mark/i, /^place/i],
  },
  {
    name: 'labels',
    words: words.set.labels,
    help: words.set.labelsHelp,
    shape: 'rows',
    optional: true,
    captions: [/^light$|^called|^unit$|^lamp$/i],
  },
  {
    name: 'key',
    words: words.set.key,
    help: words.set.keyHelp,
    shape: 'single',
    optional: true,
    captions: [/^key point/i],
  },
  {
    name: 'height',
    words: words.set.height,
    help: words.set.heightHelp,
    shape: 'single',
    quantities: ['length'],
    optional: true,
    captions: [/^height of (the )?(lines|plan)/i],
  },
  {
    name: 'outline',
    words: words.set.outline,
    help: words.set.outlineHelp,
    shape: 'pairs',
    optional: true,
  },
];

export const receptors = [
  { value: 'dome', words: words.set.dome },
  { value: 'flat', words: words.set.flat },
] as const;

export const lineKinds = [
  { value: 'key', words: words.set.asKey },
  { value: 'floor', words: words.set.lying },
  { value: 'none', words: words.set.none },
] as const;

export const sides = [
  { value: 'front', words: words.set.front },
  { value: 'side', words: words.set.side },
] as const;

export const setOptions: readonly Option[] = [
  { name: 'receptor', words: words.set.receptor, choices: receptors },
  { name: 'lines', words: words.set.lines, choices: lineKinds },
];
