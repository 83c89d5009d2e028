import { judgingPlaces } from '../../check/points.ts';
import { words } from '../../words/words.ts';
import type { Look } from '../views/look.ts';
import { pointsOf } from '../views/points.ts';
import { isComparison } from './compared.ts';
import { cellsOf, tablesWith, type Cells, type Table } from './cells.ts';
import type { HandOver, HandOverPoint, Listed, Pair } from './handover.ts';
import { missingOf } from './missing.ts';
import { rigOf } from './rig.ts';
import { rigSheetsFor, setOf } from './set.ts';
import { targetIn } from './target.ts';

/** Sheets that have points or compare options, in the order of the contents. */
export const sheetsToHandOver = (look: Look): readonly { id: string; title: string }[] =>
  look.document.sheets
    .filter((sheet) => isComparison(sheet) || pointsOf(look, judgingPlaces(sheet)).length > 0)
    .map(({ id, properties }) => ({ id, title: properties.title || properties.name }));

const nothing: Listed = { captions: [], rows: [] };

/** Undefined where the sheet is gone. */
export function handOverOf(look: Look, id: string): HandOver | undefined {
  const sheet = look.document.sheet(id);
  if (!sheet) return undefined;
  const cells = cellsOf(look, id);
  const tables = tablesWith(cells, ['reading'], cells.named);
  const [top] = tables.length > 0 ? tables : tablesWith(cells, ['fixture'], cells.named);
  const pairs = pairsAbove(look, cells, top?.head ?? cells.rows);
  const first = pairs.findIndex(({ quantity }) => quantity === 'ratio');
  const cut = first < 0 ? pairs.length : first;
  const { title, name, purpose, phase } = sheet.properties;
  const rigSheets = rigSheetsFor(look, id);
  const set = setOf(look, rigSheets);
  const others = set.rows.length > 0 ? [] : rigSheets.filter((other) => other !== id);
  const told = {
    book: look.document.title,
    place: title || name,
    purpose,
    camera: pairs.slice(0, cut),
    ratios: pairs.slice(cut),
    points: pointRows(look, cells, tables),
    rig: phase === 'match' ? nothing : rigOf(look, cells, tables, others),
    set,
    colour: colourOf(look, cells, tables),
    cautions: cautionsOf(cells),
  };
  // A rig or its colours are a part of a set-up: what is asked of the whole is on the sheet of its points.
  const isPart = phase === 'rig' || phase === 'match';
  return { ...told, missing: missingOf(told, isPart) };
}

/** Labels with the value to their right, as the settings over the points stand. */
export function pairsAbove(look: Look, cells: Cells, end: number): Pair[] {
  const pairs: Pair[] = [];
  for (let row = 0; row < end; row += 1)
    for (let column = 0; column + 1 < cells.columns; column += 1) {
      const label = cells.label(row, column);
      const value = cells.at(row, column + 1);
      const isValue = value && (value.role || value.content.kind !== 'text');
      const text = label && isValue ? cells.said(row, column + 1) : '';
      const spot = { sheet: cells.sheet, row, column: column + 1 };
      if (text) pairs.push({ label, text, quantity: look.engine.quantityOf(spot) });
    }
  return pairs;
}

function pointRows(look: Look, cells: Cells, tables: readonly Table[]): HandOverPoint[] {
  const sheet = look.document.sheet(cells.sheet);
  // On a plan only the ambient is read: what a point gets is worked out.
  const isRead = sheet?.properties.phase !== 'rig';
  const judged = sheet ? pointsOf(look, judgingPlaces(sheet)) : [];
  const rows = new Map<number, HandOverPoint>();
  for (const { target, label, words: said, shape } of judged) {
    const { row } = target.from;
    const known = rows.get(row) ?? rowSays(look, cells, tables, row, label, isRead);
    rows.set(row, { ...known, verdicts: [...known.verdicts, { words: said, shape }] });
  }
  return [...rows.values()];
}

function rowSays(
  look: Look,
  cells: Cells,
  tables: readonly Table[],
  row: number,
  label: string,
  isRead: boolean,
): HandOverPoint {
  const table = tables.find(({ rows }) => rows.includes(row));
  const column = (caption: string) => table?.columns.get(caption) ?? -1;
  const say = (caption: string) => (column(caption) < 0 ? '' : cells.said(row, column(caption)));
  const own = column('reading') < 0 && isRead ? readingIn(cells, row) : column('reading');
  const cell = cells.at(row, own);
  const wanted = say('wanted');
  const note = [say('note'), cell?.note ?? '', cell?.pointed ?? ''].filter(Boolean).join('; ');
  return {
    label: cells.named(row, 0) || label,
    wanted: [wanted, targetIn(look, cells, row, own)].filter(Boolean).join(', '),
    reading: cells.said(row, own),
    meter: say('meter') || cell?.receptor || '',
    light: say('here'),
    from: say('from key') || say('from grey'),
    verdicts: [],
    note,
  };
}

function readingIn(cells: Cells, row: number): number {
  for (let column = 0; column < cells.columns; column += 1)
    if (cells.at(row, column)?.role === 'reading') return column;
  return -1;
}

function colourOf(look: Look, cells: Cells, tables: readonly Table[]): Listed {
  const captions = ['reading', 'tint', 'from white', 'in words', 'note'];
  const rows = tables.flatMap(({ columns, rows: all }) =>
    all
      .filter((row) => {
        const spot = { sheet: cells.sheet, row, column: columns.get('reading') ?? -1 };
        return look.engine.quantityOf(spot) === 'colourTemperature';
      })
      .map((row) => [
        cells.named(row, 0),
        ...captions.map((caption) => {
          const column = columns.get(caption) ?? columns.get(caption === 'tint' ? 'wanted' : '');
          return column === undefined ? '' : cells.said(row, column);
        }),
      ]),
  );
  const { source, reading, tint, fromWhite, inWords, note } = words.print;
  return { captions: [source, reading, tint, fromWhite, inWords, note], rows };
}

/** The lines under a heading that says so. */
export function cautionsOf(cells: Cells): readonly string[] {
  const lines: string[] = [];
  const wanted = words.print.cautions.toLowerCase();
  for (let row = 0; row < cells.rows; row += 1) {
    if (cells.label(row, 0).toLowerCase() !== wanted) continue;
    for (let next = row + 1; next < cells.rows && cells.label(next, 0) !== ''; next += 1)
      lines.push(cells.label(next, 0));
  }
  return lines;
}
