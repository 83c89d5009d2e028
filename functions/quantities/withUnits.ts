import { readAmount } from './amount.ts';
import { unitBefore, unitInside } from './lookUp.ts';
import type { QuantityName } from './names.ts';
import type { Parsed } from './parsed.ts';
import type { WritingSettings } from './settings.ts';
import { toBase } from './unit.ts';
import type { Unit } from './unit.ts';
import { units } from './units.ts';
import { workbookUnit } from './workbookUnit.ts';

/** Reads a number with one of the quantity's units, or without, in the workbook's unit. */
export function readWithUnits(
  quantity: QuantityName,
  text: string,
  settings: WritingSettings,
): Parsed {
  const { small = false, fractions = false } = units[quantity];
  const front = unitBefore(text, quantity);
  const amount = readAmount(front?.rest ?? text, { decimal: settings.decimal, small });
  if (amount === undefined) return undefined;
  const unit = unitOf(quantity, amount.rest, front?.unit);
  if (unit !== undefined) return { value: toBase(unit, amount.value), unitWritten: true };
  if (amount.rest !== '' || (amount.fraction && !fractions)) return undefined;
  const workbook = workbookUnit(quantity, settings);
  const value = workbook === undefined ? amount.value : toBase(workbook, amount.value);
  return { value, unitWritten: false };
}

function unitOf(quantity: QuantityName, rest: string, front: Unit | undefined): Unit | undefined {
  if (rest === '') return front;
  return front === undefined ? unitInside(quantity, rest) : undefined;
}
