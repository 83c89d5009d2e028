import { expect, test } from 'vitest';
import { sameTree } from '../../../src/tools/install.mjs';

const wanted = {
  'node_modules/a': { version: '1.0.0' },
  'node_modules/for-another-system': { version: '1.0.0', optional: true },
};

test('what is installed agrees though packages of other systems are absent', () => {
  expect(sameTree(wanted, { 'node_modules/a': { version: '1.0.0' } })).toBe(true);
});

test.each([
  ['another version', { 'node_modules/a': { version: '1.0.1' } }],
  ['a missing package', {}],
  ['a package too many', { ...wanted, 'node_modules/b': { version: '1.0.0' } }],
])('%s asks for an install', (_what, found) => {
  expect(sameTree(wanted, found)).toBe(false);
});
