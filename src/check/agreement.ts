import type { JudgedPoint } from './points.ts';

/** How many points of a sheet, or of the book, came out as wanted. */
export interface Agreement {
  readonly agree: number;
  readonly off: number;
  readonly waiting: number;
  /** "5 of 7 points agree, 1 is off, 1 waits"; empty where there are no points. */
  readonly words: string;
}

export function agreementOf(points: readonly Pick<JudgedPoint, 'shape'>[]): Agreement {
  const agree = points.filter(({ shape }) => shape === 'agrees' || shape === 'in range').length;
  const waiting = points.filter(({ shape }) => shape === 'waits').length;
  const off = points.length - agree - waiting;
  return { agree, off, waiting, words: inWords(points.length, agree, off, waiting) };
}

function inWords(points: number, agree: number, off: number, waiting: number): string {
  if (points === 0) return '';
  const all = `${String(agree)} of ${String(points)} ${points === 1 ? 'point' : 'points'}`;
  return [
    `${all} ${agree === 1 ? 'agrees' : 'agree'}`,
    ...(off > 0 ? [`${String(off)} ${off === 1 ? 'is' : 'are'} off`] : []),
    ...(waiting > 0 ? [`${String(waiting)} ${waiting === 1 ? 'waits' : 'wait'}`] : []),
  ].join(', ');
}
