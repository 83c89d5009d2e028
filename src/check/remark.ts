import type { CellPlace } from '../engine/types.ts';

/** Something to look at in a cell. It never stops anybody. */
export interface Remark {
  readonly place: CellPlace;
  /** What was expected, what was given, what to do: `STOPS wants …; C2 is …`. */
  readonly sentence: string;
  /**
   * `unit`: quantities that do not go together. `standard`: a value outside what a standard
   * recommends. `meter`: readings of different receptors held against each other.
   */
  readonly about: 'unit' | 'standard' | 'meter';
}
