import { expect, test } from 'vitest';
import { spokenCell } from '../../../src/grid/hand/spoken.ts';

test('a number is read with its unit', () => {
  expect(spokenCell({ text: '−0.56', unit: 'stops' })).toBe('−0.56 stops');
});

test('the word of a verdict is read once', () => {
  expect(spokenCell({ text: '1/3 stop over', verdict: 'over' })).toBe('1/3 stop over');
  expect(spokenCell({ text: '1/3', unit: 'stop', verdict: 'under' })).toBe('1/3 stop, under');
  expect(spokenCell({ text: 'waiting for Fill side', verdict: 'waits' })).toBe(
    'waiting for Fill side',
  );
});

test('a blank reading is read as a reading, an error with its sentence, a note as a note', () => {
  expect(spokenCell({ text: '', role: 'reading' })).toBe('reading');
  expect(spokenCell({ text: 'no stop', state: 'error', described: 'FSTOPS got −1.' })).toBe(
    'no stop, FSTOPS got −1.',
  );
  expect(spokenCell({ text: 'no stop', state: 'error' })).toBe('no stop, error');
  expect(spokenCell({ text: 'Bench', note: true, remark: true })).toBe(
    'Bench, has a remark, has a note',
  );
});
