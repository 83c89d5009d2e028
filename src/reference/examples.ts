import type { AnyDefinition, Example, ExampleTable, Parameter } from '../../functions/define.ts';
import type { QuantityName } from '../../functions/quantities/names.ts';
import type { SourceName } from '../../functions/sources.ts';
import { readLevel } from '../../functions/quantities/read.ts';
import { defaultWriting } from '../../functions/quantities/settings.ts';
import { writeQuantity } from '../../functions/quantities/write.ts';
import type { Value } from '../../functions/values.ts';

export interface WrittenExample {
  /** `=FSTOPS("f/2.8", "f/11")` */
  readonly formula: string;
  /** The same in one cell, with lists in place of ranges: `=FCOMBINE({4, 4})`. */
  readonly alone: string;
  /** What the cells of a range hold that the formula names: `A1:A3` and `1500, 1500, 1500`. */
  readonly cells: readonly { readonly range: string; readonly holds: string }[];
  /** As the workbook shows it. */
  readonly result: string;
  readonly why: string;
  /** Whether the result is a figure from print, which was rounded there. */
  readonly rounded: boolean;
  readonly source?: SourceName;
}

type Given = Example['args'][number];
type List = Exclude<Extract<Given, readonly unknown[]>, ExampleTable>;

const isTable = (given: Given): given is ExampleTable =>
  Array.isArray(given) && Array.isArray(given[0]);
const isList = (given: Given): given is List => Array.isArray(given) && !isTable(given);

/** An example of a definition as a person would type it, and what the cell then shows. */
export function writeExample(definition: AnyDefinition, example: Example): WrittenExample {
  const cells: { range: string; holds: string }[] = [];
  // Several tables stand one below the other.
  let rowsTaken = 0;
  const texts = example.args.map((given, index) => {
    if (isTable(given)) {
      const last = String.fromCharCode(64 + Math.max(...given.map((row) => row.length)));
      const range = `A${String(rowsTaken + 1)}:${last}${String(rowsTaken + given.length)}`;
      rowsTaken += given.length;
      const rows = given.map((row) => row.map((value) => (value === null ? 'empty' : held(value))));
      cells.push({ range, holds: rows.map((row) => row.join(', ')).join('; ') });
      return range;
    }
    if (!isList(given)) return given === undefined ? '' : literal(given);
    if (definition.parameters[index]?.repeats && !given.includes(null))
      return given.map((value) => literal(value ?? 0)).join(', ');
    const column = String.fromCharCode(65 + cells.length);
    const range = `${column}1:${column}${String(given.length)}`;
    cells.push({
      range,
      holds: given.map((value) => (value === null ? 'empty' : number(value))).join(', '),
    });
    return range;
  });
  return {
    formula: `=${definition.name}(${texts.join(', ')})`,
    alone: `=${definition.name}(${example.args.map(inOneCell).join(', ')})`,
    cells,
    result: shown(example.result, resultKind(definition, example)),
    why: example.why,
    rounded: example.within !== undefined,
    ...(example.source !== undefined && { source: example.source }),
  };
}

/** An empty cell of a range counts for nothing, so a list goes without it. */
function inOneCell(given: Given): string {
  if (isTable(given)) {
    const width = Math.max(...given.map((row) => row.length));
    const rows = given.map((row) =>
      Array.from({ length: width }, (_, index) => literal(row[index] ?? '')).join(', '),
    );
    return `{${rows.join('; ')}}`;
  }
  if (!isList(given)) return given === undefined ? '' : literal(given);
  return `{${given.flatMap((value) => (value === null ? [] : number(value))).join(', ')}}`;
}

function literal(value: Value): string {
  if (typeof value === 'string') return `"${value.replaceAll('"', '""')}"`;
  return typeof value === 'number' ? number(value) : String(value).toUpperCase();
}

const held = (value: Value): string => (typeof value === 'number' ? number(value) : String(value));

/** An argument worked out exactly is written with the digits that a person would copy. */
const number = (value: number): string => String(Number(value.toPrecision(10)));

function shown(result: Value, kind: QuantityName): string {
  if (typeof result === 'string') return result;
  if (typeof result === 'boolean') return String(result).toUpperCase();
  return writeQuantity(kind, result, defaultWriting).text;
}

/** The result's quantity; where it is that of an argument, what this example wrote there. */
function resultKind({ result, parameters }: AnyDefinition, { args }: Example): QuantityName {
  if (typeof result === 'string') return result;
  const index = parameters.findIndex(({ name }: Parameter) => name === result.as);
  const given = args[index];
  const reading = typeof given === 'string' ? readLevel(given, defaultWriting) : undefined;
  return reading?.ok ? reading.quantity : 'number';
}
