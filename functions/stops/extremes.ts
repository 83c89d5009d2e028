// Math.max(...list) runs out of stack on a whole column of readings.

export function highest(levels: readonly number[]): number {
  return levels.reduce((best, level) => (level > best ? level : best), -Infinity);
}

export function lowest(levels: readonly number[]): number {
  return levels.reduce((best, level) => (level < best ? level : best), Infinity);
}
