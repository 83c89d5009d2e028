import type { PlannedCircuit, PlannedLampsOff, PlannedSurface } from './house.ts';
import type { PlannedPlace } from './places.ts';
import type { PlannedWindow } from './windows.ts';

export interface PlannedRecce {
  readonly meterAt: string;
  readonly exposure: string;
  readonly places: readonly PlannedPlace[];
  readonly windows: readonly PlannedWindow[];
  readonly circuits: readonly PlannedCircuit[];
  readonly surfaces: readonly PlannedSurface[];
  readonly lampsOff: readonly PlannedLampsOff[];
}
