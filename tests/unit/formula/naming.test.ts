import { describe, expect, test } from 'vitest';
import { faultOfName, faultOfSheetName } from '../../../src/formula/naming.ts';

const isFunction = (name: string) => name.toUpperCase() === 'STOPS';

describe('a name may not read as anything else', () => {
  test.each([
    ['Key1', '“Key1” reads as the address of a cell.', 'Key_1'],
    ['ISO800', '“ISO800” reads as the address of a cell.', 'ISO_800'],
    ['R', '“R” means a row or a column in a formula.', 'R_'],
    ['c', '“c” means a row or a column in a formula.', 'c_'],
    ['R1C1', '“R1C1” means a row or a column in a formula.', 'R1C1_'],
    ['True', '“True” is a value in a formula.', 'True_'],
    ['stops', '“stops” is a function.', 'stops_'],
    ['key side', undefined, 'key_side'],
    ['2nd', undefined, '_2nd'],
    ['', 'A name needs at least one letter.', '_'],
  ])('%s', (name, reason, offer) => {
    const fault = faultOfName(name, isFunction);
    expect(fault?.reason).toBe(
      reason ?? 'A name is made of letters, digits, “_” and “.”, and begins with a letter.',
    );
    expect(fault?.offer).toBe(offer);
    expect(faultOfName(offer, isFunction)).toBeUndefined();
  });

  test.each(['Key_1', 'Key', 'Schlüssel', 'window.left', '_x', 'Key1b', 'RCx'])(
    '%s is a name',
    (name) => {
      expect(faultOfName(name, isFunction)).toBeUndefined();
    },
  );
});

test.each([
  ['', 'A sheet needs a name.'],
  ['a:b', 'A sheet’s name cannot have [ ] : * ? / or \\ in it.'],
  ["'Loft", 'A sheet’s name cannot begin or end with an apostrophe.'],
  [' Loft', 'A sheet’s name cannot begin or end with a blank.'],
  ['x'.repeat(32), 'A sheet’s name has at most 31 characters.'],
])('no sheet is called “%s”', (name, reason) => {
  expect(faultOfSheetName(name)?.reason).toBe(reason);
});
