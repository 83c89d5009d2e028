export interface PlannedPlace {
  readonly place: string;
  /** A word a day: preparation, shoot, travel, return, or nothing. */
  readonly days: readonly string[];
}

export interface PlannedNeed {
  readonly item: string;
  readonly place: string;
  /** Where the count comes from, in words. */
  readonly from: string;
  readonly count: string;
}

export interface PlannedOrder {
  readonly item: string;
  readonly supplier: string;
  readonly kind: string;
  readonly spares?: string;
  readonly each: string;
  readonly volume: string;
  readonly rate: string;
}

export interface PlannedUse {
  readonly item: string;
  readonly supplier: string;
  readonly from: string;
  readonly count: string;
  readonly width: string;
  /** Left empty for what goes by length, such as tape. */
  readonly height?: string;
  readonly waste: string;
  /** What one roll, sheet or box of it holds: an area, or a length. */
  readonly holds: string;
  readonly price: string;
}

export interface PlannedPackage {
  readonly budget: string;
  readonly charged: string;
  readonly insurance: string;
  readonly firstDay: string;
  /** What is said of the rigs of the book, where it has any. */
  readonly ofTheRigs?: string;
  readonly places: readonly PlannedPlace[];
  readonly needs: readonly PlannedNeed[];
  readonly order: readonly PlannedOrder[];
  readonly used: readonly PlannedUse[];
}
