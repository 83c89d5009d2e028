import type { Spot } from '../look.ts';
import type { Document, Means } from '../types.ts';
import type { Region } from './growing.ts';
import { Growing, beyondSheet } from './growing.ts';
import type { Made } from './made.ts';
import { made, refused } from './made.ts';
import { words } from '../../words/words.ts';

/** Cut and paste: the cells move, and whatever refers to them follows. */
export function cutCells(document: Document, means: Means, from: Region, to: Spot): Made {
  const growing = new Growing(document, means);
  const target = growing.block({
    sheet: to.sheet,
    top: to.row,
    left: to.column,
    height: from.height,
    width: from.width,
  });
  const source = growing.block(from);
  if (!source || !target) return refused(beyondSheet);
  const still = from.sheet === to.sheet && from.top === to.row && from.left === to.column;
  return made(
    words.book.cutAndPaste,
    still ? [] : [...growing.steps, { kind: 'moveCells', from: source, to: target }],
    target,
  );
}
