import type { QuantityName } from './names.ts';

/** What a piece of text means: a number in the base unit of its quantity, or why it cannot be read. */
export type Reading =
  | {
      readonly ok: true;
      readonly value: number;
      readonly quantity: QuantityName;
      /** Whether the text itself named the unit (`250 fc`) or it was taken from the settings (`250`). */
      readonly unitWritten: boolean;
    }
  | {
      readonly ok: false;
      /** A sentence: what was expected and what was given. */
      readonly reason: string;
      /** Text of a known unit, but of another kind than the one wanted. */
      readonly wrongKind?: QuantityName;
    };
