import type { FigureKind, Hand, Made, Undrawn } from '../../figures/figure.ts';
import type { Spot } from '../../book/look.ts';
import type { ReadonlySignal } from '../kit/signals.ts';

/** What panels see of figures and ask about them. Everything is empty until what draws has loaded. */
export interface Figures {
  /** Of the sheet in view, as they stand under one another. */
  readonly shown: ReadonlySignal<readonly FigureView[]>;
  readonly kinds: ReadonlySignal<readonly FigureKind[]>;
  /** What a dialog begins with: a figure that is there as it is, a new one as the selection suggests. */
  form(kind: string, figure?: string): FigureForm;
  /** What was written in the dialog as a plan that a command takes. */
  planned(form: FigureForm): PlannedForm;
  /** Something of a figure, moved, as a plan that a command takes. */
  placed(figure: string, hand: Hand, to: readonly [across: number, up: number]): PlacedHand;
}

/** What is typed into cells because something was moved in a figure. */
export interface PlacedHand {
  readonly name: string;
  readonly entries: readonly (Spot & { readonly text: string })[];
}

export interface FigureView {
  readonly id: string;
  readonly kind: string;
  readonly kindName: string;
  readonly title: string;
  readonly made: Made | Undrawn;
}

export interface FigureForm {
  readonly kind: string;
  readonly title: string;
  /** Addresses, or values where the kind takes one, by the names of its inputs. */
  readonly fields: Readonly<Record<string, string>>;
  readonly options: Readonly<Record<string, string>>;
}

export interface PlannedForm {
  readonly kind: string;
  readonly title: string;
  readonly cells: Readonly<Record<string, string>>;
  readonly values: Readonly<Record<string, number>>;
  readonly options: Readonly<Record<string, string>>;
}
