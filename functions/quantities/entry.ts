import { units } from './units.ts';
import type { QuantityName } from './names.ts';
import { readAmount } from './amount.ts';
import { localised } from './parsed.ts';
import type { ReadingContext } from './parsed.ts';
import { readAny, readAs } from './read.ts';
import { readTruth } from './truth.ts';
import { plainHint, typedHint } from './hints.ts';
import type { WritingSettings } from './settings.ts';
import { longestEntry, shown, tidy } from './text.ts';

/** What a cell holds once its entry has been read. */
export type EntryContent =
  | { readonly kind: 'blank' }
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'truth'; readonly value: boolean };

export type Entry =
  | {
      readonly content: EntryContent;
      /** The cell's quantity, or the one that a written unit gives a plain cell. */
      readonly quantity?: QuantityName;
      /** A sentence that helps and never stops anyone. */
      readonly hint?: string;
    }
  | { readonly reason: string };

/**
 * Reads what was typed into a cell (formulas are the caller's). In a cell with a quantity it must be
 * that quantity; in a plain cell only a written unit sets one, and what cannot be read is text.
 */
export function readEntry(
  text: string,
  quantity: QuantityName | undefined,
  settings: WritingSettings,
  context: ReadingContext = {},
): Entry {
  if (text.length <= longestEntry && tidy(text) === '') return { content: { kind: 'blank' } };
  if (text.startsWith("'")) return { content: { kind: 'text', text: text.slice(1) } };
  if (quantity === 'text' || quantity === 'verdict')
    return { content: { kind: 'text', text }, quantity };
  return quantity === undefined
    ? readPlain(text, settings)
    : readTyped(text, quantity, settings, context);
}

function readTyped(
  text: string,
  quantity: QuantityName,
  settings: WritingSettings,
  context: ReadingContext,
): Entry {
  const reading = readAs(quantity, text, settings, context);
  if (!reading.ok) return { reason: reading.reason };
  const tooLow = belowLeast(quantity, reading.value);
  if (tooLow !== undefined) {
    return { reason: localised(`${tooLow}; ${shown(text)} was typed.`, settings) };
  }
  if (quantity === 'truth') {
    return { content: { kind: 'truth', value: reading.value === 1 }, quantity };
  }
  const hint = typedHint(quantity, tidy(text), reading.value);
  const content = { kind: 'number', value: reading.value } as const;
  return hint === undefined ? { content, quantity } : { content, quantity, hint };
}

function belowLeast(quantity: QuantityName, value: number): string | undefined {
  const { least, words } = units[quantity];
  const low = least === 'zero' ? value < 0 : least === 'more than zero' && value <= 0;
  if (!low) return undefined;
  return `${words.charAt(0).toUpperCase()}${words.slice(1)} must be ${least === 'zero' ? 'zero or more' : 'more than zero'}`;
}

function readPlain(text: string, settings: WritingSettings): Entry {
  const asText = { content: { kind: 'text', text } } as const;
  if (text.length > longestEntry) return asText;
  const tidied = tidy(text);
  const amount = readAmount(tidied, settings);
  if (amount?.rest === '' && !amount.fraction) {
    return { content: { kind: 'number', value: amount.value } };
  }
  if (/^(?:true|false)$/iu.test(tidied)) {
    const truth = readTruth(tidied, settings, {});
    return {
      content: {
        kind: 'truth',
        value: truth !== undefined && 'value' in truth && truth.value === 1,
      },
    };
  }
  const reading = readAny(text, settings);
  if (reading.ok) {
    return { content: { kind: 'number', value: reading.value }, quantity: reading.quantity };
  }
  const hint = reading.wrongKind === undefined ? plainHint(tidied, settings) : reading.reason;
  return hint === undefined ? asText : { ...asText, hint };
}
