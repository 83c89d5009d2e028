import { Refused } from './refused.ts';
import { words } from '../../words/words.ts';

declare const TextDecoder: new (
  label: string,
  options?: { readonly fatal: boolean },
) => { decode(bytes: Uint8Array): string };

/** The text of a part, or a sentence that it is not in UTF-8. */
export function utf8(bytes: Uint8Array, part: string): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new Refused(words.files.lettersBroken(part));
  }
}

/** Text of a table: older programs write the alphabet of western Windows. */
export function tableText(bytes: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}
