import type { ReadonlySignal } from '../../panels/kit/signals.ts';
import type { MarkedClass } from '../mark.ts';
import type { PlannedExercise } from '../plan.ts';
import type { ReturnedFile } from '../returned.ts';

/** One of ours, as it is offered. */
export interface Offered {
  readonly id: string;
  readonly title: string;
  readonly purpose: string;
  readonly level: number;
}

/** The exercise on the sheet in view, for its teacher. */
export interface Taught {
  readonly title: string;
  readonly questions: number;
  readonly points: number;
  /** Handed out before: by seed, to so many. */
  readonly classes: readonly {
    readonly id: string;
    readonly seed: string;
    readonly count: number;
  }[];
}

/** What the teacher’s screen shows and asks for. Whatever was not done comes back as a reason. */
export interface TeacherSeam {
  readonly offered: readonly Offered[];
  readonly taught: ReadonlySignal<Taught | undefined>;
  /** How far a long work is, from 0 to 1; null where there is none. */
  readonly progress: ReadonlySignal<number | null>;
  /** Stops it: nothing has come of it then. */
  cancel(): void;
  readonly marked: ReadonlySignal<MarkedClass | undefined>;
  add(id: string): string | undefined;
  handOut(names: string, seed: string): Promise<string | undefined>;
  /** Saves the key of a class as a file, apart from what learners get. */
  saveKey(klass: string): string | undefined;
  /** Prints one page a learner, or the answers apart from them. */
  print(what: 'handouts' | 'key' | 'feedback', klass: string): Promise<string | undefined>;
  mark(klass: string, files: readonly ReturnedFile[]): Promise<string | undefined>;
  save(as: 'csv' | 'xlsx'): Promise<void>;
  /** What is asked on the sheet in view, to be changed; nothing asked yet where it is no exercise. */
  plan(): PlannedExercise;
  author(planned: PlannedExercise): string | undefined;
  /** The sheet stays; what is asked on it goes. */
  remove(): string | undefined;
  /** Asks for files, or for a folder. */
  pick(folder: boolean): Promise<readonly ReturnedFile[]>;
}

/** One question as its learner sees it. */
export interface Answering {
  readonly id: string;
  readonly text: string;
  readonly points: string;
  /** As it was typed. */
  readonly typed: string;
  /** What that comes to. */
  readonly answer: string;
  readonly tries: string;
  readonly hint: string | undefined;
  /** Whether it can be checked on the spot. */
  readonly checks: boolean;
  readonly says: string;
  readonly state: 'right' | 'close' | 'notYet' | 'blank' | undefined;
}

export interface LearnerSeam {
  readonly learner: string;
  readonly questions: ReadonlySignal<readonly Answering[]>;
  /** Puts an answer into its cell, written in any way; a reason where it cannot be read. */
  type(id: string, text: string): void;
  check(id: string): void;
  jump(id: string): void;
}
