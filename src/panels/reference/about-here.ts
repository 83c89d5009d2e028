import { callAtCaret } from '../../formula/caret.ts';
import type { Workbook } from '../workbook.ts';

/** The function that the hand is at: the one being typed in, else the one that the cell is made of. */
export function functionHere(workbook: Workbook): string | undefined {
  const { text, typing } = workbook.entry.value;
  if (!typing) return workbook.slip.value.why?.function;
  const field = document.activeElement;
  const caret = field instanceof HTMLInputElement ? field.selectionStart : null;
  return callAtCaret(text, caret ?? text.length)?.name;
}
