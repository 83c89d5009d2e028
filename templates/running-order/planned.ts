export interface PlannedSetUp {
  readonly setUp: string;
  readonly place: string;
  /** The how-manieth it is shot as. */
  readonly order: string;
  /** Where each light stands; nothing where it is not used. */
  readonly lights: readonly string[];
  readonly takes: string;
  /** Whether it keeps its number when the others are put in order. */
  readonly stays?: 'yes';
}

export interface PlannedRunning {
  readonly begins: string;
  readonly lights: readonly string[];
  readonly setUps: readonly PlannedSetUp[];
}
