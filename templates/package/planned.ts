import type { PlannedNeed, PlannedOrder, PlannedPlace, PlannedUse } from './rows.ts';

export interface PlannedPackage {
  readonly budget: string;
  readonly charged: string;
  readonly insurance: string;
  readonly firstDay: string;
  readonly places: readonly PlannedPlace[];
  readonly needs: readonly PlannedNeed[];
  readonly order: readonly PlannedOrder[];
  readonly used: readonly PlannedUse[];
}
