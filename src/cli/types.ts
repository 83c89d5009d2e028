/** The world as the command line sees it, so that tests can be one. */
export interface Io {
  /** What its person reads, likeliest first: `de_AT.UTF-8`, `en`. */
  readonly languages: readonly string[];
  out(text: string): void;
  err(text: string): void;
  readInput(): Promise<string>;
  readFile(path: string): Promise<Uint8Array>;
  /** The folders on the way are made. */
  writeFile(path: string, content: Uint8Array | string): Promise<void>;
  /** The files in a folder and in the folders within it; undefined for what is no folder. */
  filesIn(path: string): Promise<readonly string[] | undefined>;
}

/** 0: all went well. 1: something has no value. 2: wrong usage, or a file that cannot be read. */
export type ExitCode = 0 | 1 | 2;

/** One word after `halfstop`. */
export interface Subcommand {
  readonly name: string;
  /** What follows the name: `[--book FILE] FORMULA…`. */
  readonly usage: string;
  /** One sentence. */
  readonly summary: string;
  /** Options that take a value, and what it is called. */
  readonly options: Readonly<Record<string, string>>;
  /** Those of them that may be given more than once. */
  readonly repeats?: readonly string[];
  /** Options that are there or not. */
  readonly flags?: readonly string[];
  /** Options may stand behind what follows the name too: nothing there begins with two dashes. */
  readonly anywhere?: true;
  run(given: Given, io: Io): Promise<ExitCode>;
}

export interface Given {
  readonly options: Readonly<Record<string, string>>;
  /** Every value of the options that may be given more than once. */
  readonly lists: Readonly<Record<string, readonly string[]>>;
  /** What follows the options. */
  readonly rest: readonly string[];
}

/** Ends a subcommand with exit code 2: the sentence goes to standard error. */
export class Unusable extends Error {}
