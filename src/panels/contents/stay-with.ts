import { effect } from '../kit/signals.ts';
import type { Workbook } from '../workbook.ts';

/** Once the contents show another order, the focus goes on with the sheet that had it. */
export function stayWith(sheet: string, link: HTMLElement, workbook: Workbook): void {
  const list = link.closest('.list');
  const order = () => workbook.contents.value.map(({ id }) => id).join(' ');
  const before = order();
  const stop = effect(() => {
    if (order() === before) return;
    queueMicrotask(() => {
      stop();
      if (list?.contains(document.activeElement))
        list.querySelector<HTMLElement>(`[data-sheet="${CSS.escape(sheet)}"]`)?.focus();
    });
  });
}
