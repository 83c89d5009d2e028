import type { GridModel } from '../contract.ts';
import type { Geometry } from '../hand/geometry.ts';
import type { Dress, Painter } from '../painter.ts';

/** Paints all rows and columns as one table; headings and frozen cells stick by CSS. */
export function paintPlain(
  shell: HTMLElement,
  model: GridModel,
  geometry: Geometry,
  dress: Dress,
): Painter {
  const scroller = document.createElement('div');
  scroller.className = 'plain-scroller';
  const table = document.createElement('table');
  table.setAttribute('role', 'presentation');
  const columns = document.createElement('colgroup');
  const head = document.createElement('thead');
  head.setAttribute('role', 'rowgroup');
  const body = document.createElement('tbody');
  body.setAttribute('role', 'rowgroup');
  table.append(columns, head, body);
  scroller.append(table);
  shell.append(scroller);

  function draw(): void {
    const widths = [geometry.rowHeadingWidth];
    for (let column = 0; column < model.columnCount; column += 1) {
      widths.push(model.columnWidth(column));
    }
    fit(columns, widths.length, 'col');
    widths.forEach((width, index) => {
      (columns.children[index] as HTMLElement).style.width = `${width}px`;
    });
    table.style.width = `${widths.reduce((sum, width) => sum + width, 0)}px`;
    drawHead();
    fit(body, model.rowCount, 'tr');
    for (let row = 0; row < model.rowCount; row += 1) drawRow(row);
  }

  function drawHead(): void {
    fit(head, 1, 'tr');
    const line = head.children[0] as HTMLElement;
    fit(line, model.columnCount + 1, 'th');
    dress.corner(line.children[0] as HTMLElement);
    for (let column = 0; column < model.columnCount; column += 1) {
      const heading = line.children[column + 1] as HTMLElement;
      dress.columnHeading(heading, column);
      stick(heading, null, column);
    }
  }

  function drawRow(row: number): void {
    const line = body.children[row] as HTMLElement;
    if (!line.firstElementChild) line.append(document.createElement('th'));
    fit(line, model.columnCount + 1, 'td');
    const heading = line.children[0] as HTMLElement;
    dress.rowHeading(heading, row);
    stick(heading, row, null);
    for (let column = 0; column < model.columnCount; column += 1) {
      const cell = line.children[column + 1] as HTMLElement;
      dress.cell(cell, row, column);
      stick(cell, row, column);
    }
  }

  /** Frozen rows and columns stay below and beside the headings. */
  function stick(element: HTMLElement, row: number | null, column: number | null): void {
    const frozenRow = row !== null && row < model.frozen.rows;
    const frozenColumn = column !== null && column < model.frozen.columns;
    element.dataset['frozen'] = frozenRow
      ? frozenColumn
        ? 'both'
        : 'row'
      : frozenColumn
        ? 'column'
        : '';
    element.style.top = frozenRow ? `${geometry.headingHeight + row * geometry.rowHeight}px` : '';
    element.style.left = frozenColumn
      ? `${geometry.rowHeadingWidth + geometry.left(column)}px`
      : '';
  }

  return { scroller, draw, settle: () => undefined, dispose: () => scroller.remove() };
}

/** Adds or removes children at the end until there are `count`. */
function fit(parent: HTMLElement, count: number, name: 'col' | 'tr' | 'th' | 'td'): void {
  while (parent.children.length > count) parent.lastElementChild?.remove();
  while (parent.children.length < count) parent.append(document.createElement(name));
}
