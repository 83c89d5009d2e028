import { signal, type Signal } from '../kit/signals.ts';

/** How the figures stand by the grid on this screen: folded away, beside it, or in its place. */
export type Stand = 'shut' | 'open' | 'tall';

const key = 'halfstop-figures';

/** On other screens the cells keep their room until figures are asked for. */
const roomy = '(min-width: 1680px), (min-width: 760px) and (min-height: 1000px)';

function kept(): Stand {
  try {
    const text = localStorage.getItem(key);
    if (text === 'shut' || text === 'open' || text === 'tall') return text;
  } catch {
    // Storage is forbidden here: figures stand as is usual.
  }
  return matchMedia(roomy).matches ? 'open' : 'shut';
}

let only: Signal<Stand> | undefined;

export const stand = (): Signal<Stand> => (only ??= signal(kept()));

export function setStand(how: Stand): void {
  stand().value = how;
  try {
    localStorage.setItem(key, how);
  } catch {
    // It lasts as long as the page.
  }
}

/** Unfolds them and moves the focus there; false where the sheet has none. */
export function showFigures(root: HTMLElement): boolean {
  const list = root.querySelector<HTMLElement>('.figures:not([hidden]) .figure-list');
  if (!list) return false;
  if (stand().value === 'shut') setStand('open');
  list.focus();
  return true;
}
