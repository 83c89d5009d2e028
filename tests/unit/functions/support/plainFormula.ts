import { HyperFormula } from 'hyperformula';
import type { Value } from '../../../../functions/values.ts';

const engine = HyperFormula.buildEmpty({ licenseKey: 'gpl-v3', smartRounding: false });
const sheet = engine.getSheetId(engine.addSheet('Plain')) ?? 0;

/**
 * Works a plain formula out with standard spreadsheet functions alone: each argument goes into a
 * column of its own, and the formula reads those cells. Nothing of ours takes part.
 */
export function workOut(formula: string, names: readonly string[], handed: readonly unknown[]) {
  engine.clearSheet(sheet);
  const places = new Map<string, string>();
  handed.forEach((argument, index) => {
    const cells = (Array.isArray(argument) ? argument : [argument]) as readonly unknown[];
    const column = String.fromCharCode(65 + index);
    engine.setCellContents(
      { sheet, col: index, row: 0 },
      cells.map((cell) => [content(cell)]),
    );
    const last = Array.isArray(argument) ? `:$${column}$${cells.length}` : '';
    places.set(names[index] ?? '', `$${column}$1${last}`);
  });
  return engine.calculateFormula(`=${withPlaces(formula, places)}`, sheet);
}

function content(cell: unknown): Value | null {
  if (typeof cell === 'string') return `'${cell}`;
  return cell === undefined ? null : (cell as Value);
}

/** Parameter names are lower case and functions upper case; quoted texts stay as they are. */
function withPlaces(formula: string, places: ReadonlyMap<string, string>): string {
  return formula.replace(/"[^"]*"|\b[a-z][a-z0-9_]*\b/g, (word) => {
    if (word.startsWith('"')) return word;
    const place = places.get(word);
    if (place === undefined) throw new Error(`"${word}" in "${formula}" is no parameter`);
    return place;
  });
}
