import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/call.ts';
import type { AnyDefinition } from '../../../../functions/define.ts';
import {
  CANDELALUX,
  DIMMERFOR,
  LIGHTFACTOR,
  NEWDISTANCE,
  NEWOUTPUT,
  PANELDISTANCE,
  WITHOUT,
} from '../../../../functions/index.ts';
import { isError, type Argument } from '../../../../functions/values.ts';
import { settings } from '../support/settings.ts';

/** The words that a cell shows, or what it gives. */
function shown(definition: AnyDefinition, ...args: readonly Argument[]) {
  const result = call(definition, args, settings);
  return isError(result) ? result.message : result;
}

describe('a lamp that cannot do it says what is in the way', () => {
  it('the other lights alone are over, and by how much', () => {
    // 100 without the 20 of this lamp are 80, twice the 40 that are wanted.
    expect(shown(LIGHTFACTOR, 100, 40, 20)).toBe('the other lights alone are 1 stop over');
    expect(shown(LIGHTFACTOR, 100, 0, 20)).toBe('the other lights alone are too much');
  });

  it('a lamp that may go out altogether goes out', () => {
    expect(shown(LIGHTFACTOR, 100, 80, 20)).toBe(0);
  });

  it('it would stand nearer than it may; as near as it may is right', () => {
    expect(shown(NEWDISTANCE, 4, 4, 2.5)).toBe('nearer than this lamp may stand');
    expect(shown(NEWDISTANCE, 4, 4, 2)).toBe(2);
  });

  it('it would need more than all its light', () => {
    expect(shown(NEWOUTPUT, 0.5, 3)).toBe('needs 150 % of its light');
    expect(shown(NEWOUTPUT, 1, 99)).toBe('needs 9900 % of its light');
    expect(shown(NEWOUTPUT, 1, 100)).toBe('needs far more light than it has');
    expect(shown(NEWOUTPUT, 1, 2000)).toBe('needs far more light than it has');
  });

  it('at full it is so many stops short', () => {
    expect(shown(DIMMERFOR, 200, 800)).toMatch(/ 2\.0 stops short /);
  });

  it('a face gives at most π times its luminance', () => {
    expect(shown(PANELDISTANCE, 1000, 1, 1, 4000)).toMatch(/at most 3142 lx/);
    expect(shown(PANELDISTANCE, 1000, 1, 1, 1000 * Math.PI)).toMatch(/at most 3142 lx/);
  });

  it('nothing is less than none: more cannot be taken away than there is', () => {
    expect(shown(WITHOUT, 100, 101)).toMatch(/^WITHOUT: other must be no more than total, 100/);
  });
});

it('light that only grazes gives nothing at all, not a last digit', () => {
  expect(shown(CANDELALUX, 100, 1, 90)).toBe(0);
  expect(shown(CANDELALUX, 100, 1, 60)).toBeCloseTo(50, 12);
});
