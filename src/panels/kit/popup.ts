const gap = 6;
const margin = 8;

/** Puts a popover under its button, or above it where there is no room below. */
export function placeBy(popup: HTMLElement, anchor: DOMRect): void {
  const { offsetWidth: width, offsetHeight: height } = popup;
  const left = Math.max(margin, Math.min(anchor.left, innerWidth - width - margin));
  const below = anchor.bottom + gap;
  const top =
    below + height + margin <= innerHeight
      ? below
      : Math.max(margin, Math.min(anchor.top - gap - height, innerHeight - height - margin));
  popup.style.left = `${left}px`;
  popup.style.top = `${top}px`;
}

/** What the keyboard acts on first. */
const first = '[role="menuitem"]:not(:disabled), [autofocus], [role="radiogroup"] :checked';

/** For `@toggle` of a popover that a button with `popovertarget` opens. */
export function placeOnOpen(event: Event): void {
  const popup = event.currentTarget as HTMLElement;
  if ((event as ToggleEvent).newState !== 'open') return;
  const anchor = document.querySelector(`[popovertarget="${popup.id}"]`);
  if (anchor) placeBy(popup, anchor.getBoundingClientRect());
  popup.querySelector<HTMLElement>(first)?.focus();
}

const steps: Readonly<Record<string, (at: number, count: number) => number>> = {
  ArrowDown: (at, count) => (at + 1) % count,
  ArrowUp: (at, count) => (at - 1 + count) % count,
  Home: () => 0,
  End: (_at, count) => count - 1,
};

/** Arrow keys, Home and End among the items that match; for menus and lists. */
export function roam(selector: string): (event: KeyboardEvent) => void {
  return (event) => {
    const step = steps[event.key];
    if (!step || event.altKey || event.ctrlKey || event.metaKey) return;
    const items = [
      ...(event.currentTarget as HTMLElement).querySelectorAll<HTMLElement>(selector),
    ].filter((item) => item.offsetParent !== null);
    if (items.length === 0) return;
    const at = items.indexOf(document.activeElement as HTMLElement);
    items[step(at, items.length)]?.focus();
    event.preventDefault();
  };
}
