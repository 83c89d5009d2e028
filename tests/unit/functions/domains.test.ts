import { describe, expect, it } from 'vitest';
import {
  above,
  any,
  between,
  countFromOne,
  inside,
  oneOf,
  positive,
  sampled,
  slantAngle,
  zeroOrMore,
  type Domain,
} from '../../../functions/domains.ts';

const allowed = (domain: Domain, ...values: number[]) =>
  values.filter((value) => domain.allows(value));

describe('a domain', () => {
  it('between two numbers has both', () => {
    const domain = between(2, 5);
    expect(allowed(domain, 1.999, 2, 3, 5, 5.001)).toEqual([2, 3, 5]);
    expect(domain.says).toBe('from 2 to 5');
    expect(domain.samples).toEqual([2, 5]);
  });

  it('above a number leaves it out and has the upper end', () => {
    const domain = above(2, 5);
    expect(allowed(domain, 2, 2.001, 5, 5.001)).toEqual([2.001, 5]);
    expect(domain.says).toBe('more than 2 and at most 5');
    expect(domain.samples[0]).toBeCloseTo(2.003, 12);
    expect(domain.samples[1]).toBe(5);
  });

  it('inside two numbers has neither', () => {
    const domain = inside(2, 5);
    expect(allowed(domain, 2, 2.001, 4.999, 5)).toEqual([2.001, 4.999]);
    expect(domain.says).toBe('more than 2 and less than 5');
    expect(domain.samples[0]).toBeCloseTo(2.003, 12);
    expect(domain.samples[1]).toBeCloseTo(4.997, 12);
  });

  it('of a slant goes from straight on to less than a right angle', () => {
    expect(allowed(slantAngle, -0.001, 0, 89.999, 90, 91)).toEqual([0, 89.999]);
  });

  it('of zero or more has zero, and of more than zero has not', () => {
    expect(allowed(zeroOrMore, -1e-9, 0, 1e9)).toEqual([0, 1e9]);
    expect(allowed(positive, -1, 0, 1e-300)).toEqual([1e-300]);
    expect(allowed(any, -1e300, 0, 1e300)).toHaveLength(3);
  });

  it('of a few numbers has these and nothing between them', () => {
    const domain = oneOf(115, 230, 400);
    expect(allowed(domain, 115, 200, 230, 400)).toEqual([115, 230, 400]);
    expect(domain.says).toBe('115, 230 or 400');
    expect(domain.samples).toEqual([115, 400]);
    expect(domain.choices).toEqual([115, 230, 400]);
    expect(oneOf(1, 3).says).toBe('1 or 3');
  });

  it('of things that are counted has whole numbers from 1', () => {
    expect(allowed(countFromOne, -1, 0, 1, 1.5, 7)).toEqual([1, 7]);
  });

  it('keeps its rule when its samples are drawn from elsewhere', () => {
    const domain = sampled(between(2, 5), 3, 4);
    expect(allowed(domain, 1, 2, 5)).toEqual([2, 5]);
    expect(domain.samples).toEqual([3, 4]);
    expect(domain.says).toBe('from 2 to 5');
  });
});
