/** Enough to be sure for a few dozen loads. */
const usualPatience = 200_000;
const grace = 1e-9;

/**
 * Fewest circuits that carry all loads whole. The largest go first, each to the first circuit with
 * room; where the sum says that fewer could do, all ways are tried, with `patience` placements
 * before the quick answer is taken.
 */
export function fewestCircuits(
  loads: readonly number[],
  capacity: number,
  patience = usualPatience,
): number {
  const sorted = loads.filter((load) => load > 0).sort((one, other) => other - one);
  const quick = firstFit(sorted, capacity);
  const total = sorted.reduce((sum, load) => sum + load, 0);
  const effort = { left: patience };
  for (let circuits = Math.ceil(total / capacity - grace); circuits < quick; circuits += 1) {
    if (fits(sorted, capacity, circuits, effort)) return circuits;
  }
  return quick;
}

function firstFit(sorted: readonly number[], capacity: number): number {
  const room: number[] = [];
  for (const load of sorted) {
    const place = room.findIndex((free) => takes(free, load));
    if (place < 0) room.push(capacity - load);
    else room[place] = (room[place] ?? 0) - load;
  }
  return room.length;
}

function fits(
  sorted: readonly number[],
  capacity: number,
  circuits: number,
  effort: { left: number },
): boolean {
  const room = Array.from({ length: circuits }, () => capacity);

  function place(index: number): boolean {
    const load = sorted[index];
    if (load === undefined) return true;
    const tried = new Set<number>();
    for (const [circuit, free] of room.entries()) {
      effort.left -= 1;
      if (effort.left < 0) return false;
      // Circuits with the same room left are alike.
      if (tried.has(free) || !takes(free, load)) continue;
      tried.add(free);
      room[circuit] = free - load;
      if (place(index + 1)) return true;
      room[circuit] = free;
    }
    return false;
  }

  return place(0);
}

function takes(free: number, load: number): boolean {
  return load <= free * (1 + grace);
}
