import type { Draft } from '../inside/draft.ts';
import type { Effect, Refusal, Step } from '../types.ts';
import type { Applied, Doer } from './applied.ts';
import {
  dropLines,
  insertLines,
  moveLines,
  removeLines,
  returnLines,
  reviveLines,
  setLines,
} from './lines.ts';
import { moveCells } from './movecells.ts';
import { defineName, removeName, renameName } from './names.ts';
import { setCells } from './setcells.ts';
import {
  addSheet,
  dropSheet,
  moveSheet,
  removeSheet,
  reviveSheet,
  setAreas,
  setSheet,
} from './sheets.ts';
import { sort } from './sort.ts';
import { setSettings, setShelf, setTitle } from './whole.ts';

const doers: { readonly [K in Step['kind']]: Doer<Extract<Step, { kind: K }>> } = {
  setCells,
  sort,
  moveCells,
  insertLines,
  dropLines,
  removeLines,
  reviveLines,
  moveLines,
  returnLines,
  setLines,
  addSheet,
  dropSheet,
  removeSheet,
  reviveSheet,
  moveSheet,
  setSheet,
  setAreas,
  defineName,
  renameName,
  removeName,
  setTitle,
  setSettings,
  setShelf,
};

export const stepKinds = Object.keys(doers) as readonly Step['kind'][];

/** Does one step to the draft, or says why not; then nothing has changed. */
export function applyStep(draft: Draft, step: Step): Applied | Refusal {
  const doer: Doer<never> = doers[step.kind];
  return (doer as Doer<Step>)(draft, step, inTurn);
}

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
