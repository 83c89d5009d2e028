import { margin, type Plan } from './paper.ts';

/** So little too much for a page makes it smaller; more goes on to another page. */
const little = 0.08;

/** Paper rounds the height of each row by itself: so much is left free. */
const slack = 0.985;

/** What stands in `.printed > section` by the part of a page that it fills, top down. */
export function fitPages(host: HTMLElement, { paper }: Plan): void {
  const height = (paper.height - margin * 2.3) * slack;
  const [head] = host.querySelectorAll('.printed-head');
  const [under] = host.querySelectorAll('.printed-foot .under-table');
  const parts = [...host.querySelectorAll('.part')];
  parts.forEach((part, index) => {
    const first = index === 0 ? (head ?? part) : part;
    const last = index === parts.length - 1 ? (under ?? part) : part;
    const from = first.getBoundingClientRect().top;
    const over = last.getBoundingClientRect().bottom - from - height;
    shrink(part.querySelector<HTMLElement>('.cells'), over, height);
  });
  const drawn = host.querySelector<HTMLElement>('.drawn');
  if (drawn) shrink(drawn, drawn.getBoundingClientRect().height - height, height);
}

function shrink(part: HTMLElement | null, over: number, height: number): void {
  if (!part || over <= 0 || over > little * height) return;
  const now = part.getBoundingClientRect().height;
  const zoom = Number(part.style.zoom || 1) * ((now - over - 1) / now);
  part.style.setProperty('zoom', String(zoom));
}
