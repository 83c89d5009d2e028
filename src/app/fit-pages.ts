import { margin, type Plan } from './paper.ts';
import { pagesOf, piecesOf, type Piece, type Row, type RowPiece } from './pages.ts';

/** One run of columns, laid: its rows and how each of them reads. */
export interface LaidPart {
  readonly element: HTMLElement;
  readonly kinds: readonly Row['kind'][];
}

/** Paper rounds the height of each row by itself: so much is left free. */
const slack = 0.985;
/** Words of seven points: cells are not made smaller than this to save a page, or by a little only. */
const smallest = 0.64;
const little = 0.92;
const leastFigure = 0.8;
const step = 0.01;
/** The hairline under a row stays as thick as it is. */
const hairline = 1;

/** Something on paper that is not cut, where it stands, and by what it is made smaller. */
interface Standing {
  readonly element: Element;
  readonly piece: Piece;
  readonly grows: 'cells' | 'figure' | 'not';
  readonly row?: { readonly part: LaidPart; readonly piece: RowPiece };
}

/**
 * Puts what stands in `.printed > section` on pages: as few as a little smaller makes possible, and
 * then as large as that many allow. Pages begin where a table may be parted, with its headings again.
 */
export function fitPages(
  host: HTMLElement,
  { paper, scale }: Plan,
  parts: readonly LaidPart[],
): void {
  const height = (paper.height - margin * 2.3) * slack;
  const standing = measure(host, parts, height);
  const [ofCells, ofFigures] = fewest(standing, height, Math.min(little, smallest / scale));
  for (const { element } of parts) zoom(element.querySelector('.cells'), scale * ofCells);
  for (const figure of host.querySelectorAll<HTMLElement>('.figure')) zoom(figure, ofFigures);
  begin(measure(host, parts, height), height);
}

function zoom(element: HTMLElement | null, by: number): void {
  element?.style.setProperty('zoom', String(by));
}

/** By how much cells and figures become smaller. */
function fewest(
  standing: readonly Standing[],
  height: number,
  smallestCells: number,
): readonly [cells: number, figures: number] {
  let best: readonly [number, number] = [1, 1];
  let pages = Infinity;
  for (let figures = 1; figures >= leastFigure - step / 2; figures -= 4 * step)
    for (let cells = 1; cells >= smallestCells - step / 2; cells -= step) {
      const by = { cells, figure: figures, not: 1 };
      const pieces = standing.map(({ piece, grows }) =>
        scaled(piece, by[grows], grows === 'cells'),
      );
      const count = pagesOf(pieces, height).length;
      const [bestCells, bestFigures] = best;
      const isLarger = count === pages && cells * figures > bestCells * bestFigures;
      if (count < pages || isLarger) [best, pages] = [[cells, figures], count];
    }
  return best;
}

function scaled(piece: Piece, by: number, isCells: boolean): Piece {
  const smaller = (height: number) => height * by + (isCells ? hairline * (1 - by) : 0);
  return { ...piece, height: smaller(piece.height), again: smaller(piece.again ?? 0) };
}

/** All that stands on paper, top down, as high as it and the white below it. */
function measure(
  host: HTMLElement,
  parts: readonly LaidPart[],
  height: number,
): readonly Standing[] {
  const found: Omit<Standing, 'row'>[] = [];
  const add = (elements: Iterable<Element>, grows: Standing['grows'], held: boolean) => {
    for (const element of elements) found.push({ element, grows, piece: { height: 0, held } });
  };
  add(host.querySelectorAll('.printed-head'), 'not', false);
  for (const { element } of parts) {
    add(element.querySelectorAll('.goes-on'), 'not', false);
    add(element.querySelectorAll('thead'), 'cells', true);
    add(element.querySelectorAll('tbody tr'), 'cells', true);
  }
  add(host.querySelectorAll('.marks, .left-out'), 'not', true);
  add(host.querySelectorAll('.end-notes'), 'not', false);
  add(host.querySelectorAll('.figure'), 'figure', false);
  const tops = found.map(({ element }) => element.getBoundingClientRect().top);
  tops.push(host.getBoundingClientRect().bottom);
  const high = (index: number) => (tops[index + 1] ?? 0) - (tops[index] ?? 0);
  const standing = found.map((one, index): Standing => ({
    ...one,
    piece: { ...one.piece, height: high(index) },
  }));
  for (const part of parts) withRows(standing, part, height);
  return standing;
}

/** What the rows of a part are to each other. */
function withRows(standing: Standing[], part: LaidPart, height: number): void {
  const head = standing.findIndex(
    ({ element }) => part.element.contains(element) && element.matches('thead'),
  );
  const rows = part.kinds.map((kind, index): Row => ({
    kind,
    height: standing[head + 1 + index]?.piece.height ?? 0,
  }));
  const letters = standing[head]?.piece.height ?? 0;
  piecesOf(rows, letters, height).forEach((piece, index) => {
    const at = head + 1 + index;
    const old = standing[at];
    // The letters stay with the first row.
    const held = piece.held === true || index === 0;
    if (old) standing[at] = { ...old, piece: { ...piece, held }, row: { part, piece } };
  });
}

/** Begins a page where one is to begin. */
function begin(standing: readonly Standing[], height: number): void {
  const [, ...starts] = pagesOf(
    standing.map(({ piece }) => piece),
    height,
  );
  for (const start of starts.reverse()) {
    const { element, row } = standing[start] ?? {};
    if (row && element) goOn(element, row.part, row.piece);
    else
      (element?.closest('.goes-on') ? element.closest('.part') : element)?.classList.add(
        'new-page',
      );
  }
}

/** The table goes on with this row on a page of its own. */
function goOn(line: Element, { element, kinds }: LaidPart, { heads }: RowPiece): void {
  const cells = element.querySelector('.cells');
  const table = cells?.querySelector('table');
  const lines = [...(table?.tBodies[0]?.rows ?? [])];
  const at = lines.findIndex((one) => one === line);
  if (!cells || !table) return;
  let copy: Element = table.cloneNode(false) as Element;
  const body = document.createElement('tbody');
  for (const group of table.querySelectorAll('colgroup, thead')) copy.append(group.cloneNode(true));
  for (const head of heads) {
    const again = lines[head]?.cloneNode(true);
    if (again) copy.querySelector('thead')?.append(again);
  }
  body.append(...lines.slice(at));
  copy.append(body);
  for (
    let around = table.parentElement;
    around && around !== element;
    around = around.parentElement
  ) {
    const shell = around.cloneNode(false) as Element;
    shell.append(copy);
    copy = shell;
  }
  copy.classList.add('new-page');
  cells.after(copy);
  for (let last = at - 1; kinds[last] === 'blank'; last -= 1) lines[last]?.remove();
}
