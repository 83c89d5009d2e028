import type { Undrawn } from '../../figures/figure.ts';
import { words } from '../../words/words.ts';

/** A figure that fails fails alone: the sheet around it goes on. */
export function unbroken<Result>(make: () => Result): Result | Undrawn {
  try {
    return make();
  } catch (cause) {
    console.error(cause);
    return { reason: words.broken.figure, cause };
  }
}
