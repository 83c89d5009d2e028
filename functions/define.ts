import type { Domain } from './domains.ts';
import type { Ephemeris } from './ephemeris.ts';
import type { Fixtures } from './fixture/fixture.ts';
import type { QuantityName } from './quantities/names.ts';
import type { SourceName } from './sources.ts';
import type { Spectra } from './spectrum/spectra.ts';
import type { FunctionError, In, Measured, TableRow, Value } from './values.ts';

/**
 * What a parameter takes: a quantity, or one of the trade's own openings.
 * `level`: any linear light (lux, candela per square metre, candela, lumens).
 * `receptor`: "dome", "flat" or a constant C, handed on as the constant.
 * `measured`: a reading of any of the parameter's `kinds`; `run` gets the number with its quantity.
 * `anything`: a number, text or truth as it stands.
 * `table`: with `range`, the rows of a range with all that stands in them, blanks and texts too.
 */
export type ParameterKind = QuantityName | 'level' | 'receptor' | 'measured' | 'anything' | 'table';

/** Settings of the book that a parameter may fall back on. */
export interface BookDefaults {
  /** Incident constant C of the book's receptor, lx·s·ISO. */
  readonly receptor: number;
  /** Share of a breaker that a continuous load may take; a local rule. */
  readonly continuousShare: number;
  /** How far off a reading may be and still agree, in stops: the sheet's, else the book's. */
  readonly tolerance: number;
}

export interface Parameter {
  readonly name: string;
  readonly quantity: ParameterKind;
  readonly help: string;
  /** Required for numbers; texts and truths have none. */
  readonly domain?: Domain;
  /** With `measured`: the quantities it takes; a plain number is taken as the first. */
  readonly kinds?: readonly [QuantityName, ...QuantityName[]];
  /** May be left out; `run` then gets undefined. */
  readonly optional?: true;
  /** May be left out; `run` then gets this. A text is read like an argument. */
  readonly default?: number | string | boolean;
  /** May be left out; `run` then gets this setting of the book. */
  readonly fromBook?: keyof BookDefaults;
  /** Takes a range (or one number); `run` gets the numbers in it, blanks skipped. */
  readonly range?: true;
  /** With `range`, in the last parameter: every further argument joins in, as in SUM(a, b, c). */
  readonly repeats?: true;
  /** In use, but outside what a standard recommends, there is a remark and no refusal. */
  readonly usual?: Domain & { readonly source: string };
}

type Single<P extends Parameter> = P['quantity'] extends 'text'
  ? string
  : P['quantity'] extends 'truth'
    ? boolean
    : P['quantity'] extends 'anything'
      ? Value
      : P['quantity'] extends 'measured'
        ? Measured
        : P['quantity'] extends 'table'
          ? TableRow
          : In<P['quantity']>;

type Handed<P extends Parameter> = P extends { readonly range: true; readonly optional: true }
  ? readonly Single<P>[] | undefined
  : P extends { readonly range: true }
    ? readonly Single<P>[]
    : P extends { readonly optional: true }
      ? Single<P> | undefined
      : Single<P>;

/** The typed arguments that `run` and the laws get, one for each parameter. */
export type ArgumentsOf<P extends readonly Parameter[]> = {
  -readonly [Index in keyof P]: Handed<P[Index]>;
};

/** The result's quantity: named, or that of the argument given to one parameter. */
export type ResultKind<P extends readonly Parameter[]> =
  QuantityName | { readonly as: P[number]['name'] };

type Returned<R> = R extends 'text' | 'verdict'
  ? string
  : R extends 'truth'
    ? boolean
    : R extends QuantityName
      ? In<R>
      : number;

/** Rows of a table as they stand in cells; `null` is an empty one. */
export type ExampleTable = readonly (readonly (Value | null)[])[];

export interface Example {
  /** Arguments as a person would write them: numbers in base units, texts with a unit, lists for ranges. */
  readonly args: readonly (Value | readonly (number | null)[] | ExampleTable | undefined)[];
  readonly result: Value;
  /** What this shows, in the trade's words. */
  readonly why: string;
  /** Where it was printed, if outside this project. */
  readonly source?: SourceName;
  /** How far a printed figure may be off, because it was rounded. Otherwise 1e-12 · max(1, |value|). */
  readonly within?: number;
}

export interface Citation {
  readonly from: SourceName;
  readonly at?: string;
}

export const families = [
  'stops',
  'exposure',
  'distance',
  'fixture',
  'filter',
  'colour',
  'power',
  'time',
] as const;
export type Family = (typeof families)[number];

export interface Definition<
  P extends readonly Parameter[] = readonly Parameter[],
  R extends ResultKind<P> = ResultKind<P>,
> {
  /** Capitals, the trade's term. */
  readonly name: string;
  readonly family: Family;
  /** One sentence: what comes out. */
  readonly summary: string;
  /** When a gaffer reaches for it, one sentence. */
  readonly job: string;
  /** What people type when they look for it and do not know the name. */
  readonly search: readonly string[];
  readonly parameters: P;
  readonly result: R;
  /** Functions to look at as well. */
  readonly alike: readonly string[];
  /** Where it stops being true. */
  readonly limits: string;
  readonly sources: readonly Citation[];
  /** At least two. */
  readonly examples: readonly Example[];
  /** Facts that hold over the whole domain; each is tried on random samples. */
  readonly laws?: Readonly<Record<string, (...args: ArgumentsOf<P>) => boolean>>;
  /**
   * The same result with standard OpenFormula functions and parameter names,
   * or the reason why it cannot be written so.
   */
  readonly formula: string | { readonly none: string; readonly equation?: string };
  readonly run: (...args: ArgumentsOf<P>) => Returned<R> | FunctionError;
  /** For what depends on the sun: called instead of `run` where the caller brings an ephemeris. */
  readonly runUnder?: (sky: Ephemeris, ...args: ArgumentsOf<P>) => Returned<R> | FunctionError;
  /** For what reads fixtures by name: called instead of `run` where the caller brings fixtures. */
  readonly runWith?: (fixtures: Fixtures, ...args: ArgumentsOf<P>) => Returned<R> | FunctionError;
  /** For what reads spectra by name: called instead of `run` where the caller brings spectra. */
  readonly runFrom?: (spectra: Spectra, ...args: ArgumentsOf<P>) => Returned<R> | FunctionError;
  /** What people should know of a result that is given all the same, a sentence. */
  readonly remark?: (fixtures: Fixtures, ...args: ArgumentsOf<P>) => string | undefined;
  /** The same for what reads spectra. */
  readonly remarkFrom?: (spectra: Spectra, ...args: ArgumentsOf<P>) => string | undefined;
}

/** A definition whose argument types have been forgotten, as the catalogue holds it. */
export type AnyDefinition = Omit<
  Definition,
  'run' | 'runUnder' | 'runWith' | 'runFrom' | 'remark' | 'remarkFrom' | 'laws'
> & {
  readonly laws?: Readonly<Record<string, (...args: never[]) => boolean>>;
  readonly run: (...args: never[]) => Value | FunctionError;
  readonly runUnder?: (sky: Ephemeris, ...args: never[]) => Value | FunctionError;
  readonly runWith?: (fixtures: Fixtures, ...args: never[]) => Value | FunctionError;
  readonly runFrom?: (spectra: Spectra, ...args: never[]) => Value | FunctionError;
  readonly remark?: (fixtures: Fixtures, ...args: never[]) => string | undefined;
  readonly remarkFrom?: (spectra: Spectra, ...args: never[]) => string | undefined;
};

/**
 * States one function of the library. The types see to it that `run` and the laws
 * take what the parameters name, in the units that they name.
 */
export function define<const P extends readonly Parameter[], const R extends ResultKind<P>>(
  definition: Definition<P, R>,
): Definition<P, R> {
  return definition;
}
