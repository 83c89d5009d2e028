import type { PlannedCamera, PlannedLogRow } from './rows.ts';

export interface PlannedLog {
  readonly scene: string;
  readonly search: string;
  readonly cameras: readonly PlannedCamera[];
  readonly rows: readonly PlannedLogRow[];
}
