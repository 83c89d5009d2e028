import type { JudgedPoint } from './points.ts';
import { words } from '../words/words.ts';

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
  const { length } = points;
  const said = length === 0 ? '' : words.check.agreement(length, agree, off, waiting);
  return { agree, off, waiting, words: said };
}
