import type { QuantityName } from './names.ts';
import type { WritingSettings } from './settings.ts';

/** What stands around a cell and may be needed to read it. */
export interface ReadingContext {
  /** Frame rate of the camera, for a shutter angle where a time is wanted. */
  readonly fps?: number;
}

/**
 * What one reader made of a text: a number in base units, or a reason why this text,
 * though plainly meant as this quantity, cannot be taken. Undefined: not this quantity at all.
 */
export type Parsed =
  | { readonly value: number; readonly unitWritten: boolean }
  | { readonly reason: string; readonly wrongKind?: QuantityName }
  | undefined;

/** Reads tidied text where the quantity is known. */
export type Reader = (text: string, settings: WritingSettings, context: ReadingContext) => Parsed;

/** A sentence whose examples use the decimal sign of the workbook. */
export function localised(sentence: string, settings: WritingSettings): string {
  return settings.decimal === '.' ? sentence : sentence.replace(/(\d)\.(?=\d)/g, '$1,');
}
