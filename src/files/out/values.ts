import type { CallSettings } from '../../../functions/call.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import type { FunctionError } from '../../../functions/values.ts';
import type { Spot } from '../../book/look.ts';
import type { Id } from '../../book/types.ts';

/** What a book comes to, from whoever calculates it: the engine is one. */
export interface Values {
  valueOf(spot: Spot): number | string | boolean | FunctionError | null;
  quantityOf(spot: Spot): QuantityName | undefined;
  /** Works out a formula as seen from a sheet. */
  evaluate(formula: string, sheet?: Id): { readonly value: ReturnType<Values['valueOf']> };
  /** What functions on a sheet fall back on. */
  settingsOf(sheet: Id): CallSettings;
}
