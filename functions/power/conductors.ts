/**
 * Most that a conductor of plain copper may resist at 20 °C, in ohm per kilometre, by section in mm².
 * IEC 60228:2004, table 2 (class 2, stranded, fixed wiring) and table 3 (class 5, flexible).
 */
const ohmsPerKilometre = {
  2: new Map([
    [0.5, 36],
    [0.75, 24.5],
    [1, 18.1],
    [1.5, 12.1],
    [2.5, 7.41],
    [4, 4.61],
    [6, 3.08],
    [10, 1.83],
    [16, 1.15],
    [25, 0.727],
    [35, 0.524],
    [50, 0.387],
    [70, 0.268],
    [95, 0.193],
    [120, 0.153],
    [150, 0.124],
    [185, 0.0991],
    [240, 0.0754],
    [300, 0.0601],
    [400, 0.047],
    [500, 0.0366],
    [630, 0.0283],
  ]),
  5: new Map([
    [0.5, 39],
    [0.75, 26],
    [1, 19.5],
    [1.5, 13.3],
    [2.5, 7.98],
    [4, 4.95],
    [6, 3.3],
    [10, 1.91],
    [16, 1.21],
    [25, 0.78],
    [35, 0.554],
    [50, 0.386],
    [70, 0.272],
    [95, 0.206],
    [120, 0.161],
    [150, 0.129],
    [185, 0.106],
    [240, 0.0801],
    [300, 0.0641],
    [400, 0.0486],
    [500, 0.0384],
    [630, 0.0287],
  ]),
} as const satisfies Record<number, ReadonlyMap<number, number>>;

/** 2: stranded, for fixed wiring. 5: flexible, as in every cable that is rolled up. */
export type ConductorClass = keyof typeof ohmsPerKilometre;

/** The sections that are made, mm². */
export const sections = [...ohmsPerKilometre[5].keys()] as [number, ...number[]];

/** Resistance of one conductor in ohm per kilometre; the temperature is its own, not the room's. */
export function resistance(area: number, temperature: number, made: ConductorClass): number {
  const at20 = ohmsPerKilometre[made].get(area) ?? NaN;
  // IEC 60228, annex: the printed factors for copper are 250 / (230 + t), from t to 20 °C.
  return (at20 * (230 + temperature)) / 250;
}
