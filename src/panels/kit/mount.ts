import { render } from 'lit-html';
import { words } from '../../words/words.ts';
import { broken } from './broken.ts';
import { effect } from './signals.ts';

/**
 * Draws `view` in `host` now and whenever a signal it read changes. Returns how to stop. What fails
 * fails here alone and says so in its place; the next change is drawn again.
 */
export function mount(host: HTMLElement, view: () => unknown): () => void {
  return effect(() => {
    try {
      render(view(), host);
    } catch (cause) {
      console.error(cause);
      afresh(host);
      render(broken(words.broken.part, cause), host);
    }
  });
}

/** A drawing that was broken off leaves nothing that could be gone on with. */
function afresh(host: HTMLElement): void {
  host.replaceChildren();
  Reflect.deleteProperty(host, '_$litPart$');
}

/** A part of the shell that never goes away. */
export function part(root: ParentNode, selector: string): HTMLElement {
  const found = root.querySelector<HTMLElement>(selector);
  if (!found) throw new Error(`The shell has no ${selector}.`);
  return found;
}
