import { describe, expect, it } from 'vitest';
import { sampleSpectra } from '../../../../src/files/spectra/samples.ts';
import { tried } from '../../../fuzz/spectra/tried.ts';
import { chance, seed } from '../../functions/support/chance.ts';

describe(`2,000 mutated files of spectra (SEED=${seed})`, () => {
  it('are read or refused in a sentence, and never give what is no number', () => {
    const next = chance(seed);
    const counts = { read: 0, refused: 0 };
    for (let turn = 0; turn < 2_000; turn += 1) {
      const outcome = tried(sampleSpectra[turn % sampleSpectra.length]!.text, next);
      expect(outcome.fault, outcome.text).toBeUndefined();
      counts[outcome.read ? 'read' : 'refused'] += 1;
    }
    // Both ways are taken often: a reader that refused everything would prove nothing.
    expect(counts.read).toBeGreaterThan(50);
    expect(counts.refused).toBeGreaterThan(500);
  });
});
