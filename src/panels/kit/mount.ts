import { render } from 'lit-html';
import { effect } from './signals.ts';

/** Draws `view` in `host` now and whenever a signal it read changes. Returns how to stop. */
export function mount(host: HTMLElement, view: () => unknown): () => void {
  return effect(() => {
    render(view(), host);
  });
}

/** A part of the shell that never goes away. */
export function part(root: ParentNode, selector: string): HTMLElement {
  const found = root.querySelector<HTMLElement>(selector);
  if (!found) throw new Error(`The shell has no ${selector}.`);
  return found;
}
