import { units } from '../../functions/quantities/units.ts';
import type { QuantityName } from '../../functions/quantities/names.ts';
import { writeForPeople } from '../../functions/quantities/write.ts';
import { writingSettings } from '../book/settings.ts';
import type { Reader } from './values.ts';

/** Nine figures are more than any tape, dimmer or meter has. */
const figures = 9;

export const roundedFor = (value: number): number => Number(value.toPrecision(figures));

/**
 * A number in base units as a person would type it into the cell: as it is shown, where that reads
 * back as the very number, else with all its figures and its base unit.
 */
export function typedFor(value: number, reader: Reader): string {
  const { quantity, settings } = reader;
  if (quantity === undefined) return localised(String(value), settings.decimal);
  const plain = localised(String(value), settings.decimal);
  const candidates = [
    writeForPeople(quantity, value, writingSettings(settings)),
    `${plain} ${baseOf(quantity)}`.trim(),
    plain,
  ];
  return candidates.find((text) => readsBack(text, value, reader)) ?? plain;
}

const baseOf = (quantity: QuantityName): string => units[quantity].base;

const localised = (number: string, decimal: '.' | ','): string => number.replace('.', decimal);

function readsBack(text: string, value: number, { means, quantity, settings }: Reader): boolean {
  const entry = means.readEntry(text, quantity, settings);
  if ('reason' in entry || entry.content.kind !== 'number') return false;
  return Math.abs(entry.content.value - value) <= 1e-12 * Math.max(1e-6, Math.abs(value));
}
