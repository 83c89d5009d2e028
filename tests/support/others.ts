import { english } from '../../src/words/english.ts';
import { bracketed } from './bracketed.ts';

/** The languages of the test pages: a browser that asks for Japanese is spoken to in brackets. */
export const others = { ja: () => Promise.resolve(bracketed(english)) };
