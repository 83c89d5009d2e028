import type { Parameter } from '../define.ts';
import { receptors } from '../receptors.ts';
import type { Argument } from '../values.ts';
import { meanings } from './domain.ts';
import type { CallSettings } from './slot.ts';

/** What a plain number, or an argument left out, means to a parameter; NaN asks for a closer look. */
export type PlainReader = (argument: Argument, settings: CallSettings) => number;

const closerLook = () => NaN;
const others: readonly Parameter['quantity'][] = ['anything', 'measured', 'table', 'text', 'truth'];

/** The short way for numbers in their domain, which is nearly every argument of a recalculation. */
export function plainReader(parameter: Parameter): PlainReader {
  const { domain, fromBook, quantity } = parameter;
  if (parameter.range || others.includes(quantity)) return closerLook;
  const allows = domain?.allows ?? (() => true);
  const meaning = meanings[quantity];
  const leftOut = plainDefault(parameter);

  return (argument, settings) => {
    if (typeof argument !== 'number') {
      if (argument !== undefined) return NaN;
      return fromBook === undefined ? leftOut : settings.book[fromBook];
    }
    const value = meaning === undefined ? argument : meaning(argument);
    return Number.isFinite(value) && allows(value) ? value : NaN;
  };
}

function plainDefault({ default: given, quantity }: Parameter): number {
  if (typeof given === 'number') return given;
  return (quantity === 'receptor' && receptors.get(String(given))) || NaN;
}
