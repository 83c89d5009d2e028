import type { PlannedRunning } from './planned.ts';

/** The scenes of the film at the harbour. Invented. */
export const harbourRunning: PlannedRunning = {
  begins: '2026-09-21 08:00',
  lights: ['Key', 'Fill', 'Back', 'Canvas left', 'Canvas right', 'Bench'],
  setUps: [
    {
      setUp: '12A interview, wide',
      place: 'Sail loft',
      order: '1',
      takes: '1.5 h',
      lights: ['window', 'chair', 'beam', 'left', 'right'],
    },
    {
      setUp: '14 rope work',
      place: 'Sail loft',
      order: '4',
      takes: '2 h',
      lights: ['bench', '', 'beam', '', '', 'bench'],
    },
    {
      setUp: '12B interview, close',
      place: 'Sail loft',
      order: '2',
      takes: '1 h',
      lights: ['window', 'close', 'beam', 'left', 'right'],
    },
    {
      setUp: '21 launch',
      place: 'Boat shed',
      order: '5',
      takes: '3 h',
      lights: ['slip', '', 'door'],
    },
    {
      setUp: '12C pick-ups',
      place: 'Sail loft',
      order: '3',
      takes: '0.5 h',
      lights: ['window', 'close', 'beam', 'left', 'right'],
    },
    {
      setUp: '30 ice',
      place: 'Ice house',
      order: '6',
      takes: '2 h',
      lights: ['', '', '', 'vault', 'steps'],
    },
  ],
};
