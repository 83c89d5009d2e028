import type { Draft } from '../inside/draft.ts';
import type { DraftSheet } from '../inside/sheet.ts';
import type { Effect, Id, Refusal, Step } from '../types.ts';
import { words } from '../../words/words.ts';

/** A step that happened: how to take it back, and what others should know. */
export interface Applied {
  readonly ok: true;
  readonly inverse: readonly Step[];
  readonly effects: readonly Effect[];
}

/** Applies steps one after the other; if one is refused, those before it are taken back. */
export type InTurn = (draft: Draft, steps: readonly Step[]) => Applied | Refusal;

/**
 * How one kind of step is done. Checks everything first: a refused step has changed nothing. A step
 * that amounts to others hands them to `inTurn`.
 */
export type Doer<S extends Step> = (draft: Draft, step: S, inTurn: InTurn) => Applied | Refusal;

export const refuse = (reason: string): Refusal => ({ ok: false, reason });

export const applied = (inverse: readonly Step[], ...effects: Effect[]): Applied => ({
  ok: true,
  inverse,
  effects,
});

/** Does `then` on a living sheet, or refuses. */
export function onSheet(
  draft: Draft,
  id: Id,
  then: (sheet: DraftSheet) => Applied | Refusal,
): Applied | Refusal {
  const sheet = draft.sheet(id);
  return sheet ? then(sheet) : refuse(words.book.sheetGone);
}
