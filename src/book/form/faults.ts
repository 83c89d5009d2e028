import type { BaseIssue } from 'valibot';
import { addressAt } from '../look.ts';
import { words } from '../../words/words.ts';

/** A schema's complaint as a sentence that says where: sheet by name, cell by address. */
export function sentenceFor(issue: BaseIssue<unknown>, json: unknown): string {
  const keys = (issue.path ?? []).map(({ key }) => key);
  const place = placeOf(keys, json);
  const key = keys.findLast((each) => typeof each === 'string');
  const what = typeof key === 'string' ? words.bookFile.key(key) : words.bookFile.itself;
  return words.bookFile.damaged(place, complaint(what, issue));
}

function complaint(what: string, issue: BaseIssue<unknown>): string {
  if (issue.received === 'undefined') return words.bookFile.missing(what);
  if (issue.expected === 'never') return words.bookFile.unknown(what);
  return words.bookFile.mustBe(what, shortened(issue.received), wanted(issue));
}

/** Rules of ours bring their own words; the schema's say which type or values they expect. */
function wanted({ kind, type, expected, message }: BaseIssue<unknown>): string {
  if (kind === 'validation' || type === 'custom' || expected === null) return message;
  const plain = expected
    .replaceAll('"', '')
    .replaceAll(' | ', words.bookFile.either)
    .replace(/^\(|\)$/g, '');
  return plain.length > 80 ? words.bookFile.oneOfKnown : plain;
}

const shortened = (text: string) => (text.length > 40 ? `${text.slice(0, 40)}…` : text);

/** Walks the same keys through the file as far as a person would name them. */
function placeOf(keys: readonly unknown[], json: unknown): string {
  if (keys[0] !== 'sheets')
    return typeof keys[0] === 'string' ? words.bookFile.inPart(keys[0]) : '';
  const sheet = inside(inside(json, 'sheets'), keys[1]);
  const name = inside(inside(sheet, 'properties'), 'name');
  const said = typeof name === 'string' ? words.bookFile.key(name) : String(Number(keys[1]) + 1);
  const address =
    keys[2] === 'cells' ? addressIn(sheet, inside(inside(sheet, 'cells'), keys[3])) : undefined;
  return address === undefined
    ? words.bookFile.onSheet(said)
    : words.bookFile.onSheetAtCell(said, address);
}

function addressIn(sheet: unknown, cell: unknown): string | undefined {
  const at = inside(cell, 'at');
  const [row, column] = typeof at === 'string' ? at.split(' ') : [];
  const spot = {
    row: position(inside(sheet, 'rows'), row),
    column: position(inside(sheet, 'columns'), column),
  };
  return spot.row < 0 || spot.column < 0 ? undefined : addressAt(spot);
}

const position = (lines: unknown, id: unknown) => (Array.isArray(lines) ? lines.indexOf(id) : -1);

function inside(value: unknown, key: unknown): unknown {
  return typeof value === 'object' &&
    value !== null &&
    (typeof key === 'string' || typeof key === 'number')
    ? Reflect.get(value, key)
    : undefined;
}
