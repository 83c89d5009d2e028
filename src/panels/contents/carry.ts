import type { SheetEntry } from '../shown.ts';
import type { Workbook } from '../workbook.ts';
import { verbs } from '../verbs.ts';
import { letGo, type Gap } from './order.ts';

/** A hand that goes less far than this, in CSS pixels, has clicked. */
const isClick = 5;

/**
 * Drags a sheet of the contents to another place, of another phase too, from where the pointer went
 * down. A finger scrolls the list instead and moves sheets by their menu.
 */
export function carry(down: PointerEvent, sheet: SheetEntry, workbook: Workbook): void {
  if (down.button !== 0 || down.pointerType === 'touch') return;
  const link = down.currentTarget as HTMLElement;
  const list = link.closest<HTMLElement>('.list');
  const own = link.closest('li');
  if (!list || !own) return;
  const leaving = new AbortController();
  const { signal } = leaving;
  let gap: Gap | undefined;

  const mark = (line: HTMLElement | null, found?: Gap) => {
    for (const one of list.querySelectorAll<HTMLElement>('[data-gap]')) delete one.dataset['gap'];
    gap = found && letGo(workbook.contents.value, sheet.id, found) ? found : undefined;
    if (gap && line) line.dataset['gap'] = gap.after ? 'after' : 'before';
  };
  const over = ({ clientX, clientY }: PointerEvent) => {
    const line = document.elementFromPoint(clientX, clientY)?.closest<HTMLElement>('.list li');
    const beside = line?.querySelector<HTMLElement>('.sheet-link')?.dataset['sheet'];
    if (!line || beside === undefined) return;
    line.scrollIntoView({ block: 'nearest' });
    const { top, height } = line.getBoundingClientRect();
    mark(line, { beside, after: clientY > top + height / 2 });
  };
  const end = () => {
    leaving.abort();
    mark(null);
    delete list.dataset['carrying'];
    delete own.dataset['carried'];
  };
  const move = (event: PointerEvent) => {
    const far = Math.hypot(event.clientX - down.clientX, event.clientY - down.clientY);
    if (list.dataset['carrying'] === undefined) {
      if (far < isClick) return;
      list.dataset['carrying'] = '';
      own.dataset['carried'] = '';
      link.setPointerCapture(down.pointerId);
    }
    over(event);
  };
  const up = () => {
    const isCarried = list.dataset['carrying'] !== undefined;
    const to = gap && letGo(workbook.contents.value, sheet.id, gap);
    end();
    // The click that follows is the end of the drag and shows no sheet.
    if (isCarried) {
      link.addEventListener('click', still, { capture: true, once: true });
      setTimeout(() => link.removeEventListener('click', still, { capture: true }));
    }
    if (to) workbook.run(verbs.moveSheet, { sheet: sheet.id, ...to });
  };
  const key = (event: KeyboardEvent) => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    end();
  };
  // A quick hand is over another line before the first of its moves is heard of.
  addEventListener('pointermove', move, { signal });
  addEventListener('pointerup', up, { signal });
  addEventListener('pointercancel', end, { signal });
  addEventListener('keydown', key, { signal, capture: true });
}

function still(event: Event): void {
  event.stopImmediatePropagation();
  event.preventDefault();
}
