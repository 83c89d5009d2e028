import { words } from '../../../words/words.ts';
import type { Surroundings } from '../../figure.ts';
import { listed } from '../../kit/words.ts';
import type { Family, Line, Place } from './read.ts';
import { sayer } from './sayer.ts';

export function describeFamily(
  { pictures, along, wordy, further }: Family,
  { writing }: Surroundings,
): readonly string[] {
  const at = sayer(along, writing);
  return [
    ...pictures.flat().flatMap((line) => lineInWords(line, at, sayer(line.quantity, writing))),
    ...(wordy.length > 0 ? [words.over.notDrawn(listed(wordy))] : []),
    ...(further > 0 ? [words.over.further(further)] : []),
  ];
}

type Say = (value: number) => string;

/** Where it begins and ends; a height or a depth between them, where there is one. */
function lineInWords({ name, pieces }: Line, at: Say, value: Say): readonly string[] {
  const places = pieces.flat();
  const [first, last] = [places[0], places.at(-1)];
  if (!first || !last) return [];
  const between = (best: Place): boolean => best.value !== first.value && best.value !== last.value;
  const highest = places.reduce((a, b) => (b.value > a.value ? b : a));
  const lowest = places.reduce((a, b) => (b.value < a.value ? b : a));
  const said = words.over;
  return [
    said.goes(name, value(first.value), at(first.at), value(last.value), at(last.at)),
    ...(between(highest) ? [said.most(name, value(highest.value), at(highest.at))] : []),
    ...(between(lowest) ? [said.least(name, value(lowest.value), at(lowest.at))] : []),
  ];
}
