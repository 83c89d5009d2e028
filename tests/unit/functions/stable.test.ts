import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { catalogue } from '../../../functions/index.ts';
import { signatureOf } from '../../../src/reference/signature.ts';
import { changes, newestNotes, updated, type Listing } from '../../../src/tools/signatures.ts';
import kept from './signatures.json' with { type: 'json' };

const root = join(import.meta.dirname, '../../..');
const { version } = JSON.parse(readFileSync(join(root, 'functions/package.json'), 'utf8')) as {
  version: string;
};
const now: Listing = {
  version,
  functions: Object.fromEntries(catalogue.map((one) => [one.name, signatureOf(one)])),
};

describe('sheets made before still work', () => {
  it('no name, order of arguments or default changed without a note in the change log', () => {
    expect(changes(kept, now)).toEqual([]);
  });

  it('every function is listed, with the version that it is promised for', () => {
    expect(Object.keys(kept.functions).sort()).toEqual(Object.keys(now.functions).sort());
    expect(kept.version).toBe(version);
  });
});

describe('a change', () => {
  const before: Listing = {
    version: '1.0.0',
    functions: { EV: 'EV(f_number, time, iso = 100)', LUX: 'LUX(footcandles)' },
  };
  const after = (functions: Record<string, string>): Listing => ({ version: '1.0.0', functions });

  it.each([
    ['another order', 'EV(time, f_number, iso = 100)'],
    ['another default', 'EV(f_number, time, iso = 400)'],
    ['another name of an argument', 'EV(aperture, time, iso = 100)'],
    ['an argument that may no longer be left out', 'EV(f_number, time, iso)'],
  ])('%s is told', (_what, signature) => {
    const changed = after({ ...before.functions, EV: signature });
    expect(changes(before, changed)).toEqual([expect.stringContaining(`became ${signature}`)]);
    expect(updated(before, changed, 'Nothing to see.')).toEqual(before);
    expect(updated(before, changed, `EV is now \`${signature}\`.`)).toEqual(changed);
  });

  it('a function that is gone is told', () => {
    const gone = after({ EV: before.functions['EV'] ?? '' });
    expect(changes(before, gone)).toEqual([expect.stringMatching(/^LUX\(footcandles\) is gone/)]);
    expect(updated(before, gone, 'Nothing to see.')).toEqual(before);
    expect(updated(before, gone, 'LUX is gone: type 25 fc.')).toEqual(gone);
  });

  it('a function that is new needs no note', () => {
    const more = after({ ...before.functions, NITS: 'NITS(footlamberts)' });
    expect(changes(before, more)).toEqual([]);
    expect(updated(before, more, '')).toEqual(more);
  });

  it('counts only under the newest heading', () => {
    expect(newestNotes('# Changes\n\n## Next\n\nEV(x)\n\n## 1.0.0\n\nEV(y)\n')).toContain('EV(x)');
    expect(newestNotes('# Changes\n\n## Next\n\n## 1.0.0\n\nEV(y)\n')).not.toContain('EV(y)');
  });
});
