import type { Draft } from '../inside/draft.ts';
import type { Effect, Refusal, Step } from '../types.ts';
import { applyStep } from './apply.ts';
import type { Applied } from './applied.ts';

/** Applies steps one after the other; if one is refused, those before it are taken back. */
export function inTurn(draft: Draft, steps: readonly Step[]): Applied | Refusal {
  const inverse: (readonly Step[])[] = [];
  const effects: Effect[] = [];
  for (const step of steps) {
    const result = applyStep(draft, step);
    if (!result.ok) {
      takeBack(draft, inverse.toReversed().flat());
      return result;
    }
    inverse.push(result.inverse);
    effects.push(...result.effects);
  }
  return { ok: true, inverse: inverse.toReversed().flat(), effects };
}

/** Inverse steps always apply: a refusal here is a mistake in a step. */
export function takeBack(draft: Draft, inverse: readonly Step[]): readonly Effect[] {
  return inverse.flatMap((step) => {
    const result = applyStep(draft, step);
    if (!result.ok) throw new Error(`Could not take back "${step.kind}": ${result.reason}`);
    return result.effects;
  });
}
