import { tokensOf } from './tokens.ts';

/** The call that the caret stands in, innermost first, and which of its arguments (from 0). */
export interface CallAtCaret {
  readonly name: string;
  readonly argument: number;
  /** Where the function's name begins. */
  readonly start: number;
}

/** For the entry line; works on a formula that is not finished. `undefined` outside any call. */
export function callAtCaret(text: string, caret: number): CallAtCaret | undefined {
  const open: (CallAtCaret | undefined)[] = [];
  let before: { name: string; start: number } | undefined;
  for (const { kind, text: run, start, end } of tokensOf(text)) {
    if (start >= caret || (end > caret && kind === 'text')) break;
    if (kind === 'open' || kind === 'openList')
      open.push(kind === 'open' && before ? { ...before, argument: 0 } : undefined);
    if (kind === 'close' || kind === 'closeList') open.pop();
    const inner = open.at(-1);
    if (kind === 'comma' && inner) open.splice(-1, 1, { ...inner, argument: inner.argument + 1 });
    if (kind !== 'blank')
      before = kind === 'function' ? { name: run.toUpperCase(), start } : undefined;
  }
  return open.findLast((call) => call !== undefined);
}
