import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import type { Document } from '../../book/types.ts';
import type { CellPlace, Engine } from '../../engine/types.ts';

/** What views are made from: the book as it is, what it comes to, and how numbers are said. */
export interface Look {
  readonly document: Document;
  readonly engine: Engine;
  readonly writing: WritingSettings;
  /** What the check has to say about a cell, in sentences. */
  remarksAt(place: CellPlace): readonly string[];
}
