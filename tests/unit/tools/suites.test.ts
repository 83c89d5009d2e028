import { expect, test } from 'vitest';
import { count } from '../../../src/tools/suites.mjs';

const report = { numPassedTests: 3, numFailedTests: 0, numPendingTests: 0, testResults: [] };

test('a quiet run counts its tests', () => {
  expect(count(report, 0)).toEqual({ passed: 3, failed: 0, skipped: 0, failures: [] });
});

test('a failed test is counted once', () => {
  const testResults = [{ status: 'failed', assertionResults: [{}] }];
  const failed = { ...report, numFailedTests: 1, testResults };
  expect(count(failed, 1).failed).toBe(1);
});

test('a file that cannot be read is a failure', () => {
  const testResults = [{ status: 'failed', assertionResults: [] }];
  expect(count({ ...report, testResults }, 1).failed).toBe(1);
});

test('a run that breaks although each test passed is a failure', () => {
  expect(count(report, 1)).toEqual({ passed: 3, failed: 1, skipped: 0, failures: [] });
});

test('a run without tests is a failure', () => {
  expect(count({ ...report, numPassedTests: 0 }, 0).failed).toBe(1);
});

test('a skipped test is told apart', () => {
  expect(count({ ...report, numPendingTests: 2 }, 0).skipped).toBe(2);
});

test('a failed test is named with what it said, for the end of the output', () => {
  const assertionResults = [
    { status: 'passed', fullName: 'adds' },
    { status: 'failed', fullName: 'subtracts', failureMessages: ['expected 1 to be 2'] },
  ];
  const testResults = [{ name: 'sums.test.ts', status: 'failed', assertionResults }];
  expect(count({ ...report, numFailedTests: 1, testResults }, 1).failures).toEqual([
    'sums.test.ts: subtracts\nexpected 1 to be 2',
  ]);
});

test('a file that cannot be read is named with the reason', () => {
  const testResults = [
    { name: 'sums.test.ts', status: 'failed', message: 'no such module', assertionResults: [] },
  ];
  expect(count({ ...report, testResults }, 1).failures).toEqual(['sums.test.ts\nno such module']);
});
