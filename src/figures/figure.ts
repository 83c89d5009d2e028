import type { Fixtures } from '../../functions/fixture/fixture.ts';
import type { QuantityName } from '../../functions/quantities/names.ts';
import type { WritingSettings } from '../../functions/quantities/settings.ts';
import type { Spectra } from '../../functions/spectrum/spectra.ts';
import type { Drawing } from './kit/element.ts';
import type { Theme } from './kit/theme.ts';
import { words } from '../words/words.ts';

/** What a cell hands to a figure: what it holds, and what that measures. */
export interface Datum {
  /** In the base unit; `null` for an empty cell and for one that has no value. */
  readonly value: number | string | boolean | null;
  readonly quantity?: QuantityName;
  /** Why there is no value: a sentence of the cell. */
  readonly reason?: string;
  /** The value waits for a reading, and is not wrong. */
  readonly waits?: true;
  /** The address of its cell, for sentences. */
  readonly at?: string;
  /** It is worked out by a formula, and not moved by hand. */
  readonly formula?: true;
}

/** A range as rows of cells; a single cell is one row of one. */
export type Block = readonly (readonly Datum[])[];

/** Something a figure is drawn from. */
export interface Input {
  readonly name: string;
  /** In the dialog and in sentences: "Reading", "What zero is". */
  readonly words: string;
  readonly help: string;
  /**
   * `rows`: a column, each row a thing of its own. `pairs`: a range of two columns. `table`: a range
   * of several columns in a fixed order, each row a thing. `grid`: a range, each cell a thing.
   */
  readonly shape: 'single' | 'rows' | 'pairs' | 'table' | 'grid';
  /** What it may measure; a number without a quantity always fits. Left out for words. */
  readonly quantities?: readonly QuantityName[];
  readonly optional?: true;
  /** May be left out, but not all like it: it stands with those that may not. */
  readonly shown?: true;
  /** Words over a column, or beside a cell, that probably holds it; the likeliest first. */
  readonly captions?: readonly RegExp[];
  /** Of a table: how many columns it has at most. */
  readonly wide?: number;
}

/** Something to choose about a figure. The first choice is the usual one. */
export interface Option {
  readonly name: string;
  readonly words: string;
  readonly choices: readonly { readonly value: string; readonly words: string }[];
  /** Offers, after these, what the book keeps: all its spectra, or the filters among them. */
  readonly shelf?: 'spectra' | 'filters';
}

/** What all figures of a sheet know besides their own inputs. */
export interface Surroundings {
  readonly writing: WritingSettings;
  /** The sheet's tolerance, in stops. */
  readonly tolerance: number;
  /** The fixtures kept in the book. */
  readonly fixtures: Fixtures;
  /** The spectra kept in the book. */
  readonly spectra: Spectra;
}

/** What a figure is made from. What was not given, or is lost, is missing. */
export interface Given extends Surroundings {
  readonly inputs: Readonly<Record<string, Block | undefined>>;
  readonly options: Readonly<Record<string, string | undefined>>;
}

export interface Size {
  /** Of the drawing, in CSS pixels. Its height follows. */
  readonly width: number;
  /** Height of its letters: 13 where the browser's own letters are 16. */
  readonly letters: number;
}

/** Why nothing can be drawn yet: one sentence. */
export interface Undrawn {
  readonly reason: string;
  /** What was thrown where nothing should have been. */
  readonly cause?: unknown;
}

/** A cell of an input that a hand moves. */
export interface HandCell {
  readonly input: string;
  readonly row: number;
  readonly column: number;
  /** "x", "aim z". */
  readonly words: string;
  /** Where it is, if a formula works it out: it is not moved by hand. */
  readonly formula?: string;
}

/** Something in a figure that can be moved along its two axes: a fixture, its aim, a point. */
export interface Hand {
  readonly id: string;
  readonly name: string;
  /** Across and up, in metres, as its cells say it. */
  readonly at: readonly [across: number, up: number];
  readonly cells: readonly [across: HandCell, up: HandCell];
}

/** A figure of these cells, ready to be drawn at any size. */
export interface Made {
  /** For screen readers, and to be read under the figure; the first says the most important thing. */
  readonly sentences: readonly string[];
  /** What can be moved in it; the drawing says where they stand. */
  readonly hands?: readonly Hand[];
  draw(theme: Theme, size: Size): Drawing;
  /** The figure with a hand elsewhere, in the frame that it has now, drawn quickly. */
  moved(hand: string, to: readonly [across: number, up: number]): Made | Undrawn;
}

/** A kind of figure with what it makes of its cells forgotten, as the registry holds it. */
export interface FigureKind {
  readonly kind: string;
  readonly name: string;
  readonly summary: string;
  readonly inputs: readonly Input[];
  readonly options: readonly Option[];
  make(given: Given): Made | Undrawn;
}

/**
 * A kind of figure: cells are read into numbers once, then said in words and drawn. All three are
 * pure: the same cells give the same picture.
 */
export interface FigureDefinition<Data> extends Omit<FigureKind, 'make'> {
  /**
   * The numbers to draw, or why there are none. While something in the figure is held, `held` is what
   * was read when it was taken.
   */
  read(given: Given, held?: Data): Data | Undrawn;
  describe(data: Data, surroundings: Surroundings): readonly string[];
  draw(data: Data, theme: Theme, size: Size, surroundings: Surroundings): Drawing;
  /** What can be moved, where something can. */
  hands?(data: Data, given: Given): readonly Hand[];
}

export function defineFigure<Data extends object>({
  read,
  describe,
  draw,
  hands,
  ...rest
}: FigureDefinition<Data>): FigureKind {
  const make = (given: Given, held?: Data): Made | Undrawn => {
    const missing = rest.inputs.find(
      ({ name, optional }) => !optional && given.inputs[name] === undefined,
    );
    if (missing) return { reason: words.figures.sayWhich(missing.words) };
    const data = read(given, held);
    if ('reason' in data) return data;
    const all = hands?.(data, given);
    return {
      sentences: describe(data, given),
      ...(all && { hands: all }),
      draw: (theme, size) => draw(data, theme, size, given),
      moved(id, to) {
        const hand = all?.find((one) => one.id === id);
        return make(hand ? movedTo(given, hand, to) : given, held ?? data);
      },
    };
  };
  return { ...rest, make: (given) => make(given) };
}

/** The cells with a hand elsewhere; what a formula works out stays. */
function movedTo(given: Given, { cells }: Hand, to: readonly [number, number]): Given {
  const inputs = { ...given.inputs };
  for (const [axis, { input, row, column, formula }] of cells.entries()) {
    const block = inputs[input];
    const datum = block?.[row]?.[column];
    const value = to[axis];
    if (!block || !datum || value === undefined || formula !== undefined) continue;
    inputs[input] = block.with(row, (block[row] ?? []).with(column, { ...datum, value }));
  }
  return { ...given, inputs };
}
