import type { Draft } from '../inside/draft.ts';
import type { Refusal, Step } from '../types.ts';
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
  return (doer as Doer<Step>)(draft, step);
}
