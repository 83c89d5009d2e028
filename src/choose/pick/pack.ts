/** Ways to hang the pieces that are tried before the programme itself must find one. */
const most = 20_000;

interface Packed {
  readonly options: readonly { readonly amps: number }[];
  readonly circuits: readonly { readonly amps: number }[];
}

interface Piece {
  readonly option: number;
  readonly amps: number;
}

/**
 * Hangs whole fixtures on circuits, the largest first and where most is free, so that the load is
 * spread: how many of each option on each circuit.
 * `undefined` where no way was found among those tried.
 */
export function pack(
  { options, circuits }: Packed,
  counts: readonly number[],
): readonly (readonly number[])[] | undefined {
  const pieces = counts
    .flatMap((count, option): Piece[] =>
      Array.from({ length: count }, () => ({ option, amps: options[option]?.amps ?? 0 })),
    )
    .toSorted((a, b) => b.amps - a.amps);
  const free = circuits.map(({ amps }) => amps);
  const hung = options.map(() => circuits.map(() => 0));
  let tried = 0;
  const hang = (at: number): boolean => {
    const piece = pieces[at];
    if (!piece) return true;
    tried += 1;
    if (tried > most) return false;
    const { option, amps } = piece;
    const line = hung[option] ?? [];
    const same = new Set<number>();
    for (const [circuit, room] of [...free.entries()].toSorted((a, b) => b[1] - a[1])) {
      // Circuits with as much room are alike: one of them stands for all.
      if (room < amps - slack || same.has(room)) continue;
      same.add(room);
      free[circuit] = room - amps;
      line[circuit] = (line[circuit] ?? 0) + 1;
      if (hang(at + 1)) return true;
      free[circuit] = room;
      line[circuit] = (line[circuit] ?? 0) - 1;
    }
    return false;
  };
  return hang(0) ? hung : undefined;
}

/** What sums of currents lose in rounding. */
const slack = 1e-9;
