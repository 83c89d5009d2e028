import { beamEdges } from '../../../functions/fixture/beam.ts';
import { candelaAt } from '../../../functions/fixture/photometry.ts';
import { readPhotometric } from '../../../src/files/photometric/read.ts';
import { type Chance, mutated } from '../mutated.ts';
import type { Tried } from '../tried.ts';

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

/** Mutates a file once to thrice, reads it, and asks what was read for all that people ask. */
export function tried(file: string, next: Chance): Tried {
  const text = mutated(file, odd, next);
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
