import type { AxisName, Layout } from '../../../src/formula/types.ts';

/** A book of two sheets whose lines are called by their numbers: `r0` is row 1, `c1` column B. */
export class PlainLayout implements Layout {
  readonly sheets = new Map([
    ['walk', 'Walk'],
    ['ice', 'Ice house'],
  ]);
  readonly names = new Map([['key_side', 'Key_side']]);
  readonly gone = new Set<string>();
  readonly limits = { rows: 100_000, columns: 1000 };

  idOfSheet(name: string) {
    return [...this.sheets].find(([, known]) => known.toLowerCase() === name.toLowerCase())?.[0];
  }

  nameOfSheet(sheet: string) {
    return this.sheets.get(sheet);
  }

  has(_sheet: string, axis: AxisName, index: number) {
    return index >= 0 && index < this.limits[axis];
  }

  lineAt(sheet: string, axis: AxisName, index: number) {
    return this.has(sheet, axis, index) ? `${axis[0] ?? ''}${String(index)}` : undefined;
  }

  /** Gone lines leave a hole: the others keep their numbers. */
  indexOf(_sheet: string, _axis: AxisName, line: string) {
    return this.gone.has(line) ? -1 : Number(line.slice(1));
  }

  nearest(_sheet: string, _axis: AxisName, line: string, end: 'from' | 'to') {
    const axis = line[0] ?? '';
    let index = Number(line.slice(1));
    while (this.gone.has(axis + String(index))) index += end === 'from' ? 1 : -1;
    return index;
  }

  spellingOf(name: string) {
    return this.names.get(name.toLowerCase());
  }
}
