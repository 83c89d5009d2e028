import { packLoads } from '../choose/pick/loads.ts';
import { readPickSheet, writePicked } from '../choose/pick/sheet.ts';
import { pickDialog } from '../choose/screen/pick.ts';
import type { Outcome } from '../commands/command.ts';
import { signal } from '../panels/kit/signals.ts';
import { words } from '../words/words.ts';
import { apart, failed, type ChooseHands } from './choose-hands.ts';
import type { Desk } from './desk.ts';

/** The loads of the sheet in view on its circuits, none split. */
export function hangLoads({ means }: ChooseHands, { book, context, session }: Desk): Outcome {
  const ground = { document: book.document, engine: context.engine, sheet: session.state.sheet };
  const made = packLoads(ground, means);
  const ran = made.ok ? book.run(made.transaction) : made;
  return ran.ok ? { ok: true, say: words.choose.loadsPacked } : ran;
}

/** The cheapest set of the table of options on this sheet, written beside them. */
export function chooseFixtures(hands: ChooseHands, desk: Desk): Outcome {
  const { context, session } = desk;
  const { sheet } = session.state;
  const read = readPickSheet({ document: desk.book.document, engine: context.engine, sheet });
  if (!read.ok) return read;
  const share = signal<number | null>(0);
  const choosing = apart({ kind: 'pick', problem: read.problem }, (done) => (share.value = done));
  pickDialog({ share, cancel: () => choosing.cancel() });
  void choosing.result.then((done) => {
    share.value = null;
    if (done.kind !== 'picked') {
      hands.tell({ ok: false, reason: done.kind === 'refused' ? done.reason : failed.reason });
      return;
    }
    const made = writePicked(desk.book.document, hands.means, sheet, read, done.picked);
    const ran = made.ok ? desk.book.run(made.transaction) : made;
    hands.tell(ran.ok ? { ok: true } : ran);
  });
  return { ok: true };
}
