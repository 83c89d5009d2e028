import type { Look } from '../views/look.ts';
import { isComparison } from './compared.ts';
import { comparisonPage } from './comparison.ts';
import { handOverOf } from './gather.ts';
import { handOverPage } from './view.ts';

/** The page of a sheet: its points handed over, or its options compared. Undefined where it is gone. */
export function pageOf(look: Look, id: string, date: string) {
  if (isComparison(look.document.sheet(id))) return comparisonPage(look, id, date);
  const told = handOverOf(look, id);
  return told && handOverPage(told, date);
}
