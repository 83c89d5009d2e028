import type { AnyDefinition, Parameter } from '../../functions/define.ts';
import { byName } from '../../functions/index.ts';
import {
  lightQuantities,
  quantityNames,
  type QuantityName,
} from '../../functions/quantities/names.ts';
import { fits } from './fits.ts';
import type { Handed } from './handed.ts';
import { agreed, type Compound, type Kind } from './kinds.ts';
import { mayBeByConstant } from './loose.ts';
import { ordinary } from './ordinary.ts';
import { textKind } from './written.ts';

/** Results that the library gives as plain numbers although they count something. */
const counted: Readonly<Record<string, Compound>> = {
  FOOTCANDLES: '~footcandles1',
  FOOTLAMBERTS: '~footlamberts1',
};

/** What a call comes to; on the way its arguments are held against what the function wants. */
export function callKind(handed: Handed): Kind {
  const { name } = handed.call;
  const definition = byName.get(name);
  return definition ? libraryKind(handed, definition) : ordinary[name]?.(handed);
}

function libraryKind(handed: Handed, { name, parameters, result }: AnyDefinition): Kind {
  const given = Array.from({ length: handed.count }, (_, index) => kindsGiven(handed, index));
  for (const [index, kinds] of given.entries()) {
    const parameter = parameters[Math.min(index, parameters.length - 1)];
    if (parameter) hearArgument(handed, index, parameter, kinds);
  }
  hearLevels(handed, parameters, given);
  if (typeof result === 'string') return counted[name] ?? result;
  const index = parameters.findIndex((parameter) => parameter.name === result.as);
  const kind = agreed(given[index] ?? []);
  const named = quantityNames.find((quantity) => quantity === parameters[index]?.quantity);
  return kind === undefined || kind === 'any' ? named : kind;
}

/** A text in an argument is read like an entry: it measures what its unit says. */
function kindsGiven(handed: Handed, index: number): readonly Kind[] {
  const node = handed.node(index);
  return node?.kind === 'text' ? [textKind(node)] : handed.kinds(index);
}

/** What a parameter takes; undefined for one that takes anything, and for tables. */
function wantedBy({ quantity, kinds }: Parameter): readonly QuantityName[] | undefined {
  if (quantity === 'level') return lightQuantities;
  if (quantity === 'measured') return kinds ?? [];
  // A meter is named in words or by its constant.
  if (quantity === 'receptor') return ['number', 'text'];
  return quantity === 'anything' || quantity === 'table' ? undefined : [quantity];
}

/** A verdict is a text to a cell, but no function asks for a text to be told a verdict. */
function takes(wanted: readonly QuantityName[], kind: Kind): boolean {
  return kind === 'verdict'
    ? wanted.includes(kind)
    : wanted.some((quantity) => fits(quantity, kind));
}

function hearArgument(
  handed: Handed,
  index: number,
  parameter: Parameter,
  kinds: readonly Kind[],
): void {
  const wanted = wantedBy(parameter);
  // Words such as "dome" are the function's own to read.
  const written = handed.node(index)?.kind === 'text';
  if (!wanted || (written && (wanted.includes('text') || wanted.includes('verdict')))) return;
  const odd = kinds.find((kind) => !takes(wanted, kind));
  if (odd === undefined || byConstant(handed, index, wanted, odd)) return;
  const { name: call } = handed.call;
  const given = handed.part(index, odd);
  handed.hear({ about: 'argument', call, parameter: parameter.name, wanted, given });
}

/** `=CANDELALUX(B2*90, …)` with watts in B2: the 90 may be what turns them into candela. */
function byConstant(
  handed: Handed,
  index: number,
  wanted: readonly QuantityName[],
  odd: Kind,
): boolean {
  const node = handed.node(index);
  return (
    node !== null &&
    wanted.some((quantity) => mayBeByConstant(quantity, odd, node, (part) => handed.kindOf(part)))
  );
}

/** Lux is never held against candela per square metre. */
function hearLevels(
  handed: Handed,
  parameters: readonly Parameter[],
  given: readonly (readonly Kind[])[],
): void {
  const levels = given.flatMap((kinds, index) => {
    const parameter = parameters[Math.min(index, parameters.length - 1)];
    if (parameter?.quantity !== 'level') return [];
    return kinds.flatMap((kind) => (isLight(kind) ? [handed.part(index, kind)] : []));
  });
  const [first] = levels;
  const other = levels.find(({ kind }) => kind !== first?.kind);
  if (first && other) handed.hear({ about: 'levels', call: handed.call.name, first, other });
}

function isLight(kind: Kind): kind is (typeof lightQuantities)[number] {
  return lightQuantities.some((light) => light === kind);
}
