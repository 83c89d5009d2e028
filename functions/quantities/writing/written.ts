/** A quantity as the grid shows it: the number, and its unit in small type behind. */
export interface Written {
  readonly number: string;
  /** Empty where the number says it all (`f/2.8`, `+⅓` has "stop"). */
  readonly unit: string;
  /** Both in one line. */
  readonly text: string;
}

export interface WritingFormat {
  /** Fixed number of decimals. */
  readonly decimals?: number;
  /** Symbol of a unit other than the workbook's. */
  readonly unit?: string;
  /** Frame rate, without which a shutter angle cannot be shown for a time. */
  readonly fps?: number;
}

/** Units that stand right behind the number: `172.8°`, `4:1`. */
const close: ReadonlySet<string> = new Set(['', '°', ':1']);

export function written(number: string, unit = ''): Written {
  const between = close.has(unit) ? '' : ' ';
  return { number, unit, text: `${number}${between}${unit}` };
}
