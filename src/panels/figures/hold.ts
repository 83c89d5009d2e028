import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import type { Hand, Made, Undrawn } from '../../figures/figure.ts';
import { said } from '../../figures/kit/words.ts';
import { signal, type Signal } from '../kit/signals.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { snapped, stepOf, type At, type Step } from './place.ts';
import type { FigureView } from './seam.ts';
import { words } from '../../words/words.ts';

/** Something of a figure that is being moved, and the figure as it would then be. */
export interface Hold {
  readonly figure: string;
  /** What the figure was when it was taken: once that changes, nothing is held any more. */
  readonly from: Made;
  readonly hand: Hand;
  readonly to: At;
  readonly made: Made | Undrawn;
  /** Its cells say so already: the figure made of them is on its way. */
  readonly kept?: true;
}

/** One hand moves at a time. */
export interface Holding {
  readonly now: Signal<Hold | null>;
  /** For screen readers: where it is and what the points read then. */
  readonly told: Signal<string>;
  /** Where a hand is, held or not. */
  at(figure: FigureView, hand: Hand): At;
  move(figure: FigureView, hand: Hand, to: At, step: Step): void;
  /** Puts what is held into its cells, as one change. */
  keep(): void;
  drop(): void;
}

export function createHolding(workbook: Workbook, writing: () => WritingSettings): Holding {
  const now = signal<Hold | null>(null);
  const told = signal('');
  const heldOf = ({ id, made }: FigureView, hand: Hand): Hold | null => {
    const { value: hold } = now;
    return hold?.figure === id && hold.from === made && hold.hand.id === hand.id ? hold : null;
  };
  const holding: Holding = {
    now,
    told,
    at: (figure, hand) => heldOf(figure, hand)?.to ?? hand.at,
    move(figure, hand, wanted, step) {
      if ('reason' in figure.made) return;
      const to = snapped(hand, wanted, stepOf(writing(), step));
      const before = holding.at(figure, hand);
      if (to[0] === before[0] && to[1] === before[1]) return;
      now.value = {
        ...{ figure: figure.id, from: figure.made, hand, to },
        made: figure.made.moved(hand.id, to),
      };
    },
    keep() {
      const { value: hold } = now;
      if (!hold || hold.kept) return;
      const plan = workbook.figures.placed(hold.figure, hold.hand, hold.to);
      const kept = plan.entries.length > 0 && workbook.run(verbs.placeInFigure, plan);
      // Back where it was, the figure is what it was, and no other is on its way.
      const [at, to] = [hold.hand.at, hold.to];
      const elsewhere = to[0] !== at[0] || to[1] !== at[1];
      now.value = kept && elsewhere ? { ...hold, kept: true } : null;
      if (kept) told.value = `${placeInWords(hold.hand, hold.to, writing())}. ${leadOf(hold.made)}`;
    },
    drop() {
      now.value = null;
    },
  };
  return holding;
}

export const leadOf = (made: Made | Undrawn): string =>
  'reason' in made ? made.reason : (made.sentences[0] ?? '');

/** "x 2.05 m, y 3 m". */
export const placeInWords = ({ cells }: Hand, at: At, writing: WritingSettings): string =>
  cells
    .map((cell, axis) =>
      words.figures.axisAt(cell.words, said('length', at[axis as 0 | 1], writing)),
    )
    .join(', ');
