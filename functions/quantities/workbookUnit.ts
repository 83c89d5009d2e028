import type { QuantityName } from './names.ts';
import type { WritingSettings } from './settings.ts';
import type { Unit } from './unit.ts';
import { unitNamed } from './units.ts';

/** The unit in which the workbook reads and shows bare numbers; undefined where there is only one. */
export function workbookUnit(quantity: QuantityName, settings: WritingSettings): Unit | undefined {
  if (quantity === 'illuminance') return unitNamed(quantity, settings.illuminance);
  if (quantity === 'luminance') return unitNamed(quantity, settings.luminance);
  if (quantity === 'length') return unitNamed(quantity, settings.length);
  if (quantity === 'area') return unitNamed(quantity, settings.length === 'm' ? 'm²' : 'ft²');
  return undefined;
}
