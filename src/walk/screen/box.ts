export interface BoxEars {
  /** Escape, or the way back of a phone. */
  escape(): void;
  key(event: KeyboardEvent): void;
}

/** The room itself: over everything else, which cannot be reached as long as it is open. */
export function openBox({ escape, key }: BoxEars): HTMLDialogElement {
  const box = document.createElement('dialog');
  box.className = 'walk';
  document.body.append(box);
  box.addEventListener('cancel', (event) => {
    event.preventDefault();
    escape();
  });
  box.addEventListener('keydown', key);
  return box;
}

/** Not before what is being drawn stands there. */
export function focusSoon(selector: string): void {
  queueMicrotask(() =>
    document.querySelector<HTMLElement>(`.walk ${selector}`)?.focus({ preventScroll: true }),
  );
}
