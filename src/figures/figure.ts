import type { QuantityName } from '../../functions/quantities/names.ts';
import type { WritingSettings } from '../../functions/quantities/settings.ts';
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
}

/** A range as rows of cells; a single cell is one row of one. */
export type Block = readonly (readonly Datum[])[];

/** Something a figure is drawn from. */
export interface Input {
  readonly name: string;
  /** In the dialog and in sentences: "Reading", "What zero is". */
  readonly words: string;
  readonly help: string;
  /** `rows`: a range, each row a thing of its own. `pairs`: a range of two columns. */
  readonly shape: 'single' | 'rows' | 'pairs';
  /** What it may measure; a number without a quantity always fits. Left out for words. */
  readonly quantities?: readonly QuantityName[];
  readonly optional?: true;
  /** Words over a column, or beside a cell, that probably holds it; the likeliest first. */
  readonly captions?: readonly RegExp[];
}

/** Something to choose about a figure. The first choice is the usual one. */
export interface Option {
  readonly name: string;
  readonly words: string;
  readonly choices: readonly { readonly value: string; readonly words: string }[];
}

/** What all figures of a sheet know besides their own inputs. */
export interface Surroundings {
  readonly writing: WritingSettings;
  /** The sheet's tolerance, in stops. */
  readonly tolerance: number;
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
}

/** A figure of these cells, ready to be drawn at any size. */
export interface Made {
  /** For screen readers, and to be read under the figure; the first says the most important thing. */
  readonly sentences: readonly string[];
  draw(theme: Theme, size: Size): Drawing;
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
  /** The numbers to draw, or why there are none. */
  read(given: Given): Data | Undrawn;
  describe(data: Data, surroundings: Surroundings): readonly string[];
  draw(data: Data, theme: Theme, size: Size, surroundings: Surroundings): Drawing;
}

export function defineFigure<Data extends object>({
  read,
  describe,
  draw,
  ...rest
}: FigureDefinition<Data>): FigureKind {
  return {
    ...rest,
    make(given) {
      const missing = rest.inputs.find(
        ({ name, optional }) => !optional && given.inputs[name] === undefined,
      );
      if (missing) return { reason: words.figures.sayWhich(missing.words) };
      const data = read(given);
      if ('reason' in data) return data;
      return {
        sentences: describe(data, given),
        draw: (theme, size) => draw(data, theme, size, given),
      };
    },
  };
}
