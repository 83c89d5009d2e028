import type { AnyDefinition } from '../../../functions/define.ts';
import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import { writeNumber } from '../../../functions/quantities/writing/number.ts';
import { isError } from '../../../functions/values.ts';
import type { CellValue, ExplainedArgument } from '../../engine/types.ts';
import type { Why } from '../shown.ts';

type Piece = Why['worked'][number];

const plain = (text: string): Piece => ({ text, number: false });

function number(value: number, writing: WritingSettings): string {
  return writeNumber(Number(value.toPrecision(4)), writing);
}

/** How an argument reads inside the formula: its number, or where it comes from. */
function inserted({ value, text, name }: ExplainedArgument, writing: WritingSettings): Piece {
  if (typeof value === 'number') return { text: number(value, writing), number: true };
  if (isError(value) || value === null) return plain(text || name);
  return { text: text || String(value ?? name), number: true };
}

const signs: Readonly<Record<string, string>> = { '*': ' × ', '/': ' / ', '+': ' + ', '-': ' − ' };

const inner = '((?:[^()]|\\([^()]*\\))*)';
const logarithm = new RegExp(`LN\\(${inner}\\) / LN\\(2\\)`, 'g');
const root = new RegExp(`SQRT\\(${inner}\\)`, 'g');

/** As people write it on paper: a logarithm to base 2 for stops, a root sign. */
const onPaper = (formula: string) =>
  formula
    .replace(logarithm, 'log2($1)')
    .replace(root, '√($1)')
    .replace(/PI\(\)/g, 'π');

/** Signs as they are set in print, with air around them. */
const spaced = (text: string) =>
  text.replace(/\s*([*/+-])\s*/g, (_all, sign: string) => signs[sign] ?? sign);

/**
 * The definition's formula with this cell's numbers in place of the parameters, and what it comes
 * to: `2 × log2(1.587 / 2.828) = −1.667`. Empty for functions that no formula expresses.
 */
export function workedFormula(
  { formula }: AnyDefinition,
  args: readonly ExplainedArgument[],
  result: CellValue,
  writing: WritingSettings,
): readonly Piece[] {
  const written = typeof formula === 'string' ? formula : formula.equation;
  if (written === undefined) return [];
  const byName = new Map(args.map((one) => [one.name, one]));
  const pieces = onPaper(written)
    .split(/([\p{L}_][\p{L}\p{N}_]*)/u)
    .map((text, index): Piece => {
      const argument = index % 2 === 1 ? byName.get(text) : undefined;
      return argument ? inserted(argument, writing) : plain(index % 2 === 1 ? text : spaced(text));
    });
  const comesTo = typeof result === 'number' ? [plain(` = ${number(result, writing)}`)] : [];
  return [...pieces, ...comesTo].filter(({ text }) => text !== '');
}
