import { html, render } from 'lit-html';
import { placeBy, roam } from './popup.ts';

export type MenuItem =
  | {
      readonly name: string;
      readonly keys?: string;
      /** Why it cannot run now, shown on hover. */
      readonly unavailable?: string;
      readonly run: () => void;
    }
  | 'line';

/** Where a menu opens: by an element, or at a point of the window. */
export type MenuPlace = HTMLElement | { readonly x: number; readonly y: number };

function rectOf(place: MenuPlace): DOMRect {
  return place instanceof HTMLElement
    ? place.getBoundingClientRect()
    : new DOMRect(place.x, place.y, 0, 0);
}

/** Opens a menu that closes on choice, Escape or a click elsewhere and gives the focus back. */
export function openMenu(place: MenuPlace, label: string, items: readonly MenuItem[]): void {
  const menu = document.createElement('div');
  const before = document.activeElement;
  menu.className = 'popup menu';
  menu.popover = 'auto';
  menu.setAttribute('role', 'menu');
  menu.setAttribute('aria-label', label);
  const choose = (run: () => void) => {
    menu.hidePopover();
    run();
  };
  const draw = (item: MenuItem) =>
    item === 'line'
      ? html`<hr />`
      : html`<button
          role="menuitem"
          ?disabled=${item.unavailable !== undefined}
          title=${item.unavailable ?? ''}
          @click=${() => choose(item.run)}
        >
          <span>${item.name}</span><kbd>${item.keys ?? ''}</kbd>
        </button>`;
  render(items.map(draw), menu);
  document.body.append(menu);
  menu.addEventListener('keydown', roam('[role=menuitem]:not(:disabled)'));
  menu.addEventListener('keydown', (event) => {
    if (event.key === 'Tab') menu.hidePopover();
    event.stopPropagation();
  });
  menu.addEventListener('toggle', (event) => {
    if ((event as ToggleEvent).newState === 'open') return;
    if (menu.contains(document.activeElement) || document.activeElement === document.body)
      (before as HTMLElement | null)?.focus();
    menu.remove();
  });
  menu.showPopover();
  placeBy(menu, rectOf(place));
  menu.querySelector<HTMLElement>('[role=menuitem]:not(:disabled)')?.focus();
}
