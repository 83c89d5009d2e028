import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../src/book/form/read.ts';
import { createBook } from '../../src/book/book.ts';
import { readAddress } from '../../src/book/look.ts';
import { connectEngine } from '../../src/engine/index.ts';
import { fixturesIn } from '../../src/files/photometric/shelf.ts';

// Every total of the days in the sample book, once more from its rows as they stand: by loops over
// days and pieces, not by the formulas of the sheets. Rules of hire are common practice; current is
// P / (U · power factor) (IEC 60050-131); a matt surface of luminance L under E reflects π L / E
// (CIE S 017); stops are log2 (ISO 2720).

const file = new URL('../../templates/harbour-hours/book.json', import.meta.url);
const read = readBook(readFileSync(file, 'utf8'));
if (!read.ok) throw new Error(read.reason);
const book = createBook(read.document);
const engine = connectEngine(book, { fixtures: fixturesIn });

function on(sheet: string) {
  const id = book.document.sheetNamed(sheet)?.id;
  const valueOf = (cell: string) => {
    const at = readAddress(cell);
    if (!at || id === undefined) throw new Error(`${sheet}!${cell}`);
    return engine.valueOf({ sheet: id, ...at });
  };
  return {
    number: (cell: string) => Number(valueOf(cell)) || 0,
    text: (cell: string) => String(valueOf(cell) ?? ''),
    isBlank: (cell: string) => valueOf(cell) === null || valueOf(cell) === '',
  };
}

const rowsFrom = (first: number, last: number) =>
  Array.from({ length: last - first + 1 }, (_, index) => first + index);
const sumOf = <T>(all: readonly T[], of: (one: T) => number): number =>
  all.reduce((sum, one) => sum + of(one), 0);

describe('recce', () => {
  const { number, text, isBlank } = on('Recce');
  const circuits = rowsFrom(20, 27).filter((row) => !isBlank(`A${row}`));

  it('a circuit has free what its breaker may give less what the house takes', () => {
    expect(circuits.length).toBeGreaterThanOrEqual(4);
    for (const row of circuits) {
      const takes = number(`F${row}`) ? number(`F${row}`) / (number('B1') * number(`G${row}`)) : 0;
      const free = number(`D${row}`) * number('E1') - takes;
      expect(number(`H${row}`)).toBeCloseTo(takes, 9);
      expect(number(`I${row}`)).toBeCloseTo(free, 9);
      // What is free is not rounded up.
      expect(text(`C${row}`)).toContain(`${(Math.floor(free * 10) / 10).toFixed(1)} A free`);
    }
  });

  it('surfaces reflect what comes back of what falls on them', () => {
    const surfaces = rowsFrom(30, 37).filter((row) => !isBlank(`A${row}`));
    expect(surfaces.length).toBeGreaterThanOrEqual(3);
    for (const row of surfaces) {
      const share = (Math.PI * number(`E${row}`)) / number(`D${row}`);
      expect(number(`F${row}`)).toBeCloseTo(share, 9);
      expect(number(`G${row}`)).toBeCloseTo(Math.log2(share / 0.18), 9);
    }
  });
});

describe('hire', () => {
  const { number, text, isBlank } = on('Hire');
  const hires = rowsFrom(8, 21)
    .filter((row) => !isBlank(`A${row}`))
    .map((row) => {
      const [out, back] = [number(`D${row}`), number(`E${row}`)];
      const days = back - out + 1;
      const left = 1 - number(`I${row}`);
      const [day, week] = [number(`G${row}`) * left, number(`H${row}`) * left];
      // Day after day: the seventh of each ends a week, and no week costs more than its rate.
      let one = 0;
      for (let from = 0; from < days; from += 7) {
        const part = Math.min(7, days - from);
        if (isBlank(`H${row}`)) one += day * Math.min(part, number('B1'));
        else one += part === 7 ? week : Math.min(part * day, week);
      }
      const count = number(`C${row}`);
      const cost = isBlank(`J${row}`) ? count * one : 0;
      const watts = number(`M${row}`);
      const amps = watts ? (count * watts) / (number('B2') * number(`N${row}`)) : 0;
      return {
        row,
        place: text(`B${row}`),
        out,
        back,
        days,
        count,
        cost,
        watts: count * watts,
        amps,
      };
    });
  const outOn = (day: number, place?: string) =>
    hires.filter(
      (one) => one.out <= day && day <= one.back && (place === undefined || one.place === place),
    );

  it('every row and the whole', () => {
    expect(hires.length).toBeGreaterThanOrEqual(6);
    for (const { row, days, cost, watts, amps } of hires) {
      expect(number(`F${row}`)).toBe(days);
      expect(number(`K${row}`)).toBeCloseTo(cost, 9);
      expect(number(`O${row}`)).toBeCloseTo(watts, 9);
      expect(number(`P${row}`)).toBeCloseTo(amps, 9);
    }
    const hire = sumOf(hires, ({ cost }) => cost);
    const whole = hire * (1 + number('D1'));
    expect(number('B3')).toBeCloseTo(hire, 9);
    expect(number('F3')).toBeCloseTo(whole, 9);
    expect(text('B4')).toContain(Math.abs(number('F1') - whole).toFixed(2));
  });

  it('every day and place, and what each place has free', () => {
    const perDay = (all: typeof hires) => sumOf(all, ({ cost, days }) => cost / days);
    for (const row of rowsFrom(24, 30)) {
      const day = number(`A${row}`);
      for (const column of 'BCD')
        expect(number(`${column}${row}`)).toBeCloseTo(perDay(outOn(day, text(`${column}23`))), 9);
      expect(number(`E${row}`)).toBeCloseTo(perDay(outOn(day)), 9);
      expect(number(`F${row}`)).toBe(sumOf(outOn(day), ({ count }) => count));
    }
    for (const row of rowsFrom(40, 60)) {
      const there = outOn(number(`A${row}`), text(`B${row}`));
      expect(number(`C${row}`)).toBe(sumOf(there, ({ count }) => count));
      expect(number(`D${row}`)).toBeCloseTo(
        sumOf(there, ({ watts }) => watts),
        9,
      );
      expect(number(`E${row}`)).toBeCloseTo(
        sumOf(there, ({ amps }) => amps),
        9,
      );
      expect(number(`G${row}`)).toBeCloseTo(perDay(there), 9);
    }
    for (const row of rowsFrom(35, 37)) {
      const days = rowsFrom(24, 30).map((at) => number(`A${at}`));
      const most = Math.max(
        ...days.map((day) => sumOf(outOn(day, text(`A${row}`)), ({ amps }) => amps)),
      );
      expect(number(`D${row}`)).toBeCloseTo(most, 9);
      expect(number(`E${row}`)).toBeCloseTo(number(`C${row}`) - most, 9);
    }
  });
});

describe('what is used up, bought by the roll', () => {
  const { number, isBlank } = on('Package');

  it('as many as the waste lets it take, and never a part of one', () => {
    const rows = rowsFrom(61, 66).filter((row) => !isBlank(`A${row}`));
    expect(rows.length).toBe(3);
    for (const row of rows) {
      const byArea = !isBlank(`F${row}`);
      const one = number(`E${row}`) * (byArea ? number(`F${row}`) : 1);
      const wanted = number(`D${row}`) * one * (1 + number(`I${row}`));
      const holds = number(byArea ? `J${row}` : `K${row}`);
      // Roll after roll until it is enough.
      let rolls = 0;
      while (rolls * holds < wanted - 1e-9) rolls += 1;
      expect(number(`N${row}`)).toBe(rolls);
      expect(number(`U${row}`)).toBeCloseTo(rolls * number(`S${row}`), 9);
    }
    expect(number('D3')).toBeCloseTo(
      sumOf(rows, (row) => number(`U${row}`)),
      9,
    );
  });
});

describe('the running order', () => {
  const { number, text, isBlank } = on('Running order');
  const order = rowsFrom(18, 27).filter((row) => !isBlank(`A${row}`));
  const lights = (row: number) => [...'EFGHIJKL'].map((column) => text(`${column}${row}`));

  it('rigs, strikes, moves, hours and times follow from one another', () => {
    expect(order.length).toBe(6);
    let now = number('B1');
    const all = { moves: 0, hours: 0 };
    let standing: readonly string[] = [];
    let place = '';
    for (const row of order) {
      const there = text(`B${row}`);
      const same = there === place;
      const change = { rig: 0, strike: 0, move: 0 };
      for (const [light, where] of lights(row).entries()) {
        const before = standing[light] ?? '';
        if (same && where !== '' && before !== '') change.move += where === before ? 0 : 1;
        else {
          change.rig += where === '' ? 0 : 1;
          change.strike += before === '' ? 0 : 1;
        }
      }
      const way = place !== '' && !same ? number('H2') : 0;
      const hours =
        change.rig * number('B2') + change.strike * number('D2') + change.move * number('F2') + way;
      expect([number(`M${row}`), number(`N${row}`), number(`O${row}`)]).toEqual([
        change.rig,
        change.strike,
        change.move,
      ]);
      expect(number(`P${row}`)).toBeCloseTo(hours, 9);
      const day = number('B1') + Math.floor(now - number('B1') + 1e-9);
      const end = now + (hours + number(`D${row}`)) / 24;
      if (end > day + number('D1') / 24 + 1e-9) now = day + 1;
      expect(number(`Q${row}`)).toBeCloseTo(now, 9);
      now += (hours + number(`D${row}`)) / 24;
      expect(number(`R${row}`)).toBeCloseTo(now, 9);
      all.moves += change.rig + change.strike + change.move;
      all.hours += hours;
      [standing, place] = [lights(row), there];
    }
    const last = standing.filter((where) => where !== '').length;
    const hours = (all.hours + last * number('D2')).toFixed(1);
    expect(text('B3')).toMatch(new RegExp(`^${all.moves + last} moves, ${hours} h to rig`));
  });

  it('begins on the first day of the recce, at its places', () => {
    const recce = on('Recce');
    expect(number('B1')).toBeCloseTo(recce.number('B4') + 8 / 24, 9);
    const places = new Set(rowsFrom(4, 7).map((row) => recce.text(`A${row}`)));
    for (const row of order) expect(places.has(text(`B${row}`))).toBe(true);
  });
});

describe('the log', () => {
  const { number, text, isBlank } = on('Set-up log');
  const logged = rowsFrom(29, 88).filter((row) => !isBlank(`A${row}`) || !isBlank(`F${row}`));

  it('the scene is found on all its days', () => {
    const found = logged.filter((row) => text(`A${row}`) === text('B1'));
    expect(new Set(found.map((row) => number(`C${row}`))).size).toBeGreaterThan(1);
    expect(text('B3')).toBe(`${found.length} of ${logged.length} rows`);
    for (const [index, row] of found.entries())
      for (const column of 'ABEFGHIKLM')
        expect(text(`${column}${11 + index}`)).toBe(text(`${column}${row}`));
  });

  it('the B camera stands where index and exposure time put it', () => {
    const [a, b] = [6, 7].map((row) => ({ ei: number(`B${row}`), time: number(`C${row}`) }));
    const stops = Math.log2((b!.ei * b!.time) / (a!.ei * a!.time));
    expect(number('F7')).toBeCloseTo(stops, 9);
    expect(number('D7')).toBeCloseTo(number('D6') * 2 ** (stops / 2), 9);
    expect(text('E7')).toBe(
      `B camera EI ${b!.ei} against ${a!.ei}: ${stops.toFixed(2)} stop more, T${number('D7').toFixed(1)} beside T${number('D6').toFixed(1)}`,
    );
  });
});

describe('out and back', () => {
  const { number, text, isBlank } = on('Out and back');

  it('is what the order sent out, missing and charged piece by piece', () => {
    const counted = rowsFrom(7, 28).filter((row) => !isBlank(`A${row}`) && !isBlank(`D${row}`));
    expect(counted.length).toBeGreaterThanOrEqual(10);
    const missing = (row: number) => number(`C${row}`) - number(`D${row}`);
    for (const row of counted) expect(number(`F${row}`)).toBe(missing(row));
    const charged = sumOf(
      counted,
      (row) =>
        Math.max(0, missing(row)) * number(`G${row}`) + number(`E${row}`) * number(`H${row}`),
    );
    expect(number('I4')).toBeCloseTo(charged, 9);
    expect(text('B4')).toContain(
      `${sumOf(counted, missing)} missing, ${sumOf(counted, (row) => number(`E${row}`))} damaged`,
    );
  });

  it('what is to be reordered is what is short of what is kept', () => {
    const stock = rowsFrom(31, 36).filter((row) => !isBlank(`A${row}`));
    expect(stock.length).toBe(3);
    for (const row of stock)
      expect(number(`F${row}`)).toBe(Math.max(0, number(`C${row}`) - number(`D${row}`)));
  });
});
