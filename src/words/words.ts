import { english } from './english.ts';

/** The shape of a catalogue: a sentence may be any text, a function keeps what it is given. */
type Said<T> = T extends string
  ? string
  : T extends (...given: infer Given) => string
    ? (...given: Given) => string
    : { readonly [Key in keyof T]: Said<T[Key]> };

/** Every sentence the product says. Another language is a folder that satisfies this. */
export type Words = Said<typeof english>;

/** What is said now. Modules read it as they load, so another language is spoken before them. */
export let words: Words = english;

/** Says everything in another language from now on: call it before the app’s modules load. */
export function speak(other: Words): void {
  words = other;
}
