import { plural } from './plural.ts';

/** The list of what does not go together in the book. */
export const remarks = {
  some: (count: number) =>
    `${plural(count, 'remark')} on what cells measure. Each goes once its cell is right.`,
  title: 'Remarks',
  none: 'What cells measure goes together throughout the book.',
  worthALook: 'Worth a look',
  more: (count: number) => `and ${String(count)} more on this sheet`,
} as const;
