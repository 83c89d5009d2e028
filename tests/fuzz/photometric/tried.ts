import { beamEdges } from '../../../functions/fixture/beam.ts';
import { candelaAt } from '../../../functions/fixture/photometry.ts';
import { readPhotometric } from '../../../src/files/photometric/read.ts';

type Chance = () => number;

interface Tried {
  readonly text: string;
  readonly read: boolean;
  /** What is wrong with what came out. */
  readonly fault: string | undefined;
}

const pick = <T>(list: readonly T[], next: Chance): T => list[Math.floor(next() * list.length)]!;

const odd = [
  ...['-1', '0', '1', '2', '3', '1e308', '-1e308', '1e-320', '999999999', '4.5', 'NaN', 'Infinity'],
  ...[
    '',
    ',',
    ';',
    '0x10',
    '1,5',
    '１２',
    '\u0000',
    '🎬',
    '--5',
    '1e',
    '.',
    '5000',
    '360',
    '180',
    '90',
  ],
  ...['TILT=INCLUDE', 'TILT=NONE', '[MORE]', '__proto__'],
];

const mutations: readonly ((text: string, next: Chance) => string)[] = [
  (text, next) => text.slice(0, Math.floor(next() * text.length)),
  (text, next) => replaceWord(text, pick(odd, next), next),
  (text, next) => replaceWord(text, String(Math.round((next() - 0.2) * 1000) / 10), next),
  (text, next) => {
    const at = Math.floor(next() * text.length);
    return text.slice(0, at) + String.fromCharCode(Math.floor(next() * 300)) + text.slice(at + 1);
  },
  (text, next) => {
    const lines = text.split('\n');
    const at = Math.floor(next() * lines.length);
    const other = pick(lines, next);
    lines.splice(at, next() < 0.5 ? 1 : 0, ...(next() < 0.5 ? [other] : []));
    return lines.join('\n');
  },
  (text, next) => text.replaceAll('\n', pick(['\r', '\r\n', ' ', ',', '\n\n'], next)),
  (text, next) => {
    const [from, to] = [next(), next()].map((place) => Math.floor(place * text.length));
    return text.slice(0, from) + text.slice(to);
  },
];

function replaceWord(text: string, by: string, next: Chance): string {
  const words = [...text.matchAll(/[^\s,]+/g)];
  const word = pick(words, next);
  return text.slice(0, word.index) + by + text.slice(word.index + word[0].length);
}

/** Mutates a file once to thrice, reads it, and asks what was read for all that people ask. */
export function tried(file: string, next: Chance): Tried {
  let text = file;
  for (let times = Math.ceil(next() * 3); times > 0; times -= 1)
    if (text.trim() !== '') text = pick(mutations, next)(text, next);
  const result = readPhotometric(text);
  if (!result.ok) {
    const proper = /^Line \d+: \S.*[.] Nothing was taken\.$/su.test(result.reason);
    const inside = result.line >= 1 && result.line <= text.split(/\r\n|\n|\r/).length;
    return { text, read: false, fault: proper && inside ? undefined : result.reason };
  }
  const { photometry } = result;
  const edges = beamEdges(photometry, 0.5, 0);
  const numbers = [
    ...[photometry.lumens, photometry.peak, photometry.watts ?? 0],
    ...[photometry.face.width, photometry.face.height],
    ...[edges?.left ?? 0, edges?.right ?? 0],
    ...Array.from({ length: 40 }, () => candelaAt(photometry, next() * 180, (next() - 0.5) * 1000)),
    ...[0, 90, 180].map((gamma) => candelaAt(photometry, gamma, 0)),
  ];
  const wrong = numbers.find((number) => !Number.isFinite(number));
  return { text, read: true, fault: wrong === undefined ? undefined : `It gives ${wrong}.` };
}
