import { describe, expect, it } from 'vitest';
import { addressesIn } from '../../../src/panels/slip/links.ts';
import { attacks } from '../../fuzz/attacks.ts';

const hrefs = (text: string) => addressesIn(text).map(({ href }) => href);

describe('addresses in a cell', () => {
  it('are those that begin with https, without the sentence around them', () => {
    expect(
      hrefs('Recce: https://loft.example/plan?a=1#b, see (https://boat.example/shed).'),
    ).toEqual(['https://loft.example/plan?a=1#b', 'https://boat.example/shed']);
    expect(hrefs('http://loft.example ftp://loft.example javascript:hit() loft.example')).toEqual(
      [],
    );
  });

  it('with a name and password before the host are none', () => {
    expect(hrefs('https://bank.example@hit.example https://a:b@hit.example')).toEqual([]);
  });

  it('show a host of foreign letters as it is asked for', () => {
    // The first letter is Cyrillic.
    expect(addressesIn('https://\u0430pple.example')[0]?.host).toBe('xn--pple-43d.example');
  });

  it('of texts made to do harm are https or none', () => {
    for (const text of attacks)
      for (const { protocol } of addressesIn(text)) expect(protocol, text).toBe('https:');
  });

  it('are five at most', () => {
    expect(hrefs('https://a.example '.repeat(50))).toHaveLength(5);
  });
});
