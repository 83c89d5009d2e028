import { mapReferences } from '../../formula/adjust.ts';
import type { Formula, Reference } from '../../formula/types.ts';
import { figuresOf, keepFigures, rewriteFigure } from '../figures.ts';
import type { Area, Cell, CellAt, Id, Step } from '../types.ts';
import type { Draft } from './draft.ts';
import type { HolderKey } from './uses.ts';

export type Replace = (reference: Reference) => Reference;

/**
 * The steps that replace references in these formulas (living ones only), wherever they stand.
 * Nothing is changed yet. Areas and figures, which hold ranges too, are looked through whole.
 */
export function rewriting(
  draft: Draft,
  holders: Iterable<HolderKey>,
  replace: Replace,
  skip: (sheet: Id, row: Id, column: Id) => boolean = () => false,
): Step[] {
  const cells = new Map<Id, Map<string, CellAt>>();
  const names: Step[] = [];
  for (const holder of holders) {
    const [kind, first = '', row = '', column = ''] = holder.split(' ');
    if (kind === 'name') names.push(...renamed(draft, first, replace));
    else if (!skip(first, row, column)) collect(draft, first, row, column, replace, cells);
  }
  const sets = [...cells].map(([sheet, changed]): Step => ({
    kind: 'setCells',
    sheet,
    cells: [...changed.values()],
  }));
  return [
    ...sets,
    ...names,
    ...areasRewritten(draft, replace),
    ...figuresRewritten(draft, replace),
  ];
}

/** Both the formula and the target of a cell are replaced at once. */
function collect(
  draft: Draft,
  sheetId: Id,
  row: Id,
  column: Id,
  replace: Replace,
  cells: Map<Id, Map<string, CellAt>>,
): void {
  const sheet = draft.sheet(sheetId);
  if (!sheet || sheet.rows.indexOf(row) < 0 || sheet.columns.indexOf(column) < 0) return;
  const cell = sheet.cell(row, column);
  const changed = cell && rewriteCell(cell, replace);
  if (!changed || changed === cell) return;
  const ofSheet = cells.get(sheetId) ?? new Map<string, CellAt>();
  cells.set(sheetId, ofSheet.set(`${row} ${column}`, { row, column, cell: changed }));
}

/** The cell with the references of its formula and target replaced; the same cell if none were. */
export function rewriteCell(cell: Cell, replace: Replace): Cell {
  const content =
    cell.content.kind === 'formula' ? withFormula(cell.content.formula, replace) : cell.content;
  const target = typeof cell.target === 'object' ? mapReferences(cell.target, replace) : undefined;
  const sameContent = content === cell.content || isSame(content, cell.content);
  const sameTarget = target === undefined || target === cell.target;
  if (sameContent && sameTarget) return cell;
  return { ...cell, content, ...(target && { target }) };
}

const withFormula = (formula: Formula, replace: Replace): Cell['content'] => ({
  kind: 'formula',
  formula: mapReferences(formula, replace),
});

const isSame = (a: Cell['content'], b: Cell['content']) =>
  a.kind === 'formula' && b.kind === 'formula' && a.formula === b.formula;

function renamed(draft: Draft, id: Id, replace: Replace): Step[] {
  const name = draft.nameWithId(id);
  const formula = name && mapReferences(name.formula, replace);
  return !name || formula === name.formula || !formula
    ? []
    : [{ kind: 'defineName', name: { ...name, formula } }];
}

function areasRewritten(draft: Draft, replace: Replace): Step[] {
  return draft.sheets.flatMap((sheet): Step[] => {
    const areas = sheet.areas.map((area): Area => {
      const range = replace(area.range);
      // An area belongs to its sheet: cells cut to another one leave it behind.
      return range.kind === 'range' && range.sheet === sheet.id ? { ...area, range } : area;
    });
    const changed = areas.some(({ range }, i) => range !== sheet.areas[i]?.range);
    return changed ? [{ kind: 'setAreas', sheet: sheet.id, areas }] : [];
  });
}

function figuresRewritten(draft: Draft, replace: Replace): Step[] {
  const changed = figuresOf(draft).flatMap((figure) => {
    const rewritten = rewriteFigure(figure, replace);
    return rewritten === figure ? [] : [rewritten];
  });
  return changed.length > 0 ? [keepFigures(changed)] : [];
}
