/** What a parameter of a function may be. */
export const kinds = {
  anything: 'anything',
  level: 'any light level',
  measured: 'a reading with its unit',
  receptor: 'dome, flat or a constant',
  table: 'a table',
  inUnit: (kind: string, unit: string) => `${kind} in ${unit}`,
} as const;
