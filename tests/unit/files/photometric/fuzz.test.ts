import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { tried } from '../../../fuzz/photometric/tried.ts';
import { chance, seed } from '../../functions/support/chance.ts';

const folder = join(import.meta.dirname, '../../../standards/photometric-files');
const files = readdirSync(folder).map((file) => readFileSync(join(folder, file), 'latin1'));

describe(`2,000 mutated photometric files (SEED=${seed})`, () => {
  it('are read or refused in a sentence, and never give what is no number', () => {
    const next = chance(seed);
    const counts = { read: 0, refused: 0 };
    for (let turn = 0; turn < 2_000; turn += 1) {
      const outcome = tried(files[turn % files.length]!, next);
      expect(outcome.fault, outcome.text).toBeUndefined();
      counts[outcome.read ? 'read' : 'refused'] += 1;
    }
    // Both ways are taken often: a reader that refused everything would prove nothing.
    expect(counts.read).toBeGreaterThan(50);
    expect(counts.refused).toBeGreaterThan(500);
  });
});
