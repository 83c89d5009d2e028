import { DetailedCellError, type CellValue as Calculated } from 'hyperformula';
import type { FunctionError } from '../../functions/values.ts';
import { cellAt, placeAt, spotOf } from '../book/look.ts';
import { readAddress } from '../book/look.ts';
import type { Place } from '../book/types.ts';
import { cycleThrough } from './cycle.ts';
import { codeOf, spokenError } from './errors.ts';
import { addressFrom, readMarks } from './marks.ts';
import type { Model } from './model.ts';
import type { CellPlace, CellValue } from './types.ts';
import { roundTrip, sentence } from './words.ts';
import { words } from '../words/words.ts';

/**
 * A calculated value as the rest of the house sees it. `at` is the cell it stands in, undefined for
 * a formula outside the cells; `from` is the sheet that addresses in sentences are seen from.
 */
export function readValue(
  model: Model,
  value: Calculated,
  at: CellPlace | undefined,
  from: string,
): CellValue {
  return value instanceof DetailedCellError ? readError(model, value, at, from) : value;
}

function readError(
  model: Model,
  error: DetailedCellError,
  at: CellPlace | undefined,
  from: string,
): FunctionError {
  const spoken = spokenError(error);
  if (spoken) return { ...spoken, message: readMarks(model.document, spoken.message, from) };
  const code = codeOf(error);
  const origin = originOf(model, error.address);
  if (code === '#CYCLE!' && origin) {
    const round = cycleThrough(model.document, origin);
    return {
      code,
      message: roundTrip(round.map((spot) => addressFrom(model.document, spot, from))),
    };
  }
  const said = detailOf(model, error, origin, from) ?? sentence(code, error.message);
  const elsewhere = origin && !(at && same(origin, at));
  return {
    code,
    message: elsewhere
      ? words.engine.elsewhere(said, addressFrom(model.document, origin, from))
      : said,
  };
}

function same(a: CellPlace, b: CellPlace): boolean {
  return a.sheet === b.sheet && a.row === b.row && a.column === b.column;
}

/** `Sheet_3!B2`, as HyperFormula names the cell where an error began. */
function originOf(model: Model, address: string | undefined): CellPlace | undefined {
  const match = /^Sheet_(\d+)!(.+)$/.exec(address ?? '');
  const spot = match && readAddress(match[2] ?? '');
  return spot ? { sheet: model.sheetId(Number(match[1])), ...spot } : undefined;
}

/** Which cell is to blame, where the formula at the origin shows it. */
function detailOf(
  model: Model,
  error: DetailedCellError,
  origin: CellPlace | undefined,
  from: string,
): string | undefined {
  const code = codeOf(error);
  if (code !== '#DIV/0!' && code !== '#VALUE!') return undefined;
  const place = origin && placeAt(model.document, origin);
  const content = place && cellAt(model.document, place)?.content;
  if (content?.kind !== 'formula') return undefined;
  for (const reference of content.formula.references) {
    if (reference.kind !== 'cell') continue;
    const read: Place = {
      sheet: reference.sheet,
      row: reference.at.row.id,
      column: reference.at.column.id,
    };
    const spot = spotOf(model.document, read);
    const address = spot && model.address(spot);
    if (!address) continue;
    const value = model.calculator.getCellValue(address);
    const name = addressFrom(model.document, spot, from);
    if (code === '#VALUE!' && typeof value === 'string') return words.engine.holdsText(name, value);
    if (code === '#DIV/0!' && value === null) return words.engine.dividedByEmpty(name);
    if (code === '#DIV/0!' && value === 0) return words.engine.dividedByNothing(name);
  }
  return undefined;
}
