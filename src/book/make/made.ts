import type { Block, Refusal, Step, Transaction } from '../types.ts';

/** A transaction ready to run, or the reason why there is none. Without steps there is nothing to do. */
export type Made = { readonly ok: true; readonly transaction: Transaction } | Refusal;

export function made(label: string, steps: readonly Step[], go?: Block): Made {
  return { ok: true, transaction: { label, steps, ...(go && { go }) } };
}

export const refused = (reason: string): Refusal => ({ ok: false, reason });
