import type { Document } from '../book/types.ts';
import type { Engine } from './types.ts';
import { callSettings } from './settings.ts';

/** What a book comes to, for those who write it out for other programs. */
export function valuesFor(document: Document, engine: Engine) {
  return {
    valueOf: engine.valueOf.bind(engine),
    quantityOf: engine.quantityOf.bind(engine),
    evaluate: engine.evaluate.bind(engine),
    settingsOf: (sheet: string) => callSettings(document.settings, document.sheet(sheet)),
  };
}
