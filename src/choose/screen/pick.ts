import { waiting } from '../../panels/files/waiting.ts';
import { openDialogBox } from '../../panels/kit/dialog.ts';
import type { ReadonlySignal } from '../../panels/kit/signals.ts';
import { words } from '../../words/words.ts';

/** While sets are tried: how far it is, and a way to stop. `null` closes it. */
export function pickDialog(seam: {
  readonly share: ReadonlySignal<number | null>;
  cancel(): void;
}): void {
  openDialogBox(
    { title: words.choose.pick, className: 'exchange', closed: () => seam.cancel() },
    (close) => {
      const share = seam.share.value;
      if (share === null) queueMicrotask(close);
      return waiting(words.choose.picking, share ?? 1, close);
    },
  );
}
