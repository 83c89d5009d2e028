import { describe, expect, it } from 'vitest';
import { expected } from '../../templates/compare/expected.ts';
import { comesToWhatItSays } from '../support/comes.ts';
import { openFilled } from '../support/filled.ts';

// The options are invented; what they come to is worked out by hand in templates/compare/expected.ts
// from the exposure equation of ISO 2720, the inverse square law and the rules of hire.

const sheet = openFilled('compare');

describe('options side by side', () => {
  comesToWhatItSays(sheet, expected);

  it('two stops more wanted, and only the narrow spot would still be bright enough', () => {
    const { type, valueOf } = openFilled('compare');
    type('B1', 'f/8');
    expect(valueOf('B6')).toBe('No option reaches the light over the whole width.');
    expect(valueOf('B10')).toBe('0.6 stops short');
    type('D2', '1 m');
    expect(valueOf('B6')).toBe('Fresnel, spot is the cheapest that is enough, at 60.24.');
  });

  it('a price typed anew changes who is cheapest', () => {
    const { type, valueOf } = openFilled('compare');
    type('T14', '0');
    type('S10', '90');
    expect(valueOf('B6')).toMatch(/^Open face, bounced is the cheapest that is enough, at 105\.36/);
  });

  it('a fixture that takes more than a circuit gives says so', () => {
    const { type, valueOf } = openFilled('compare');
    type('O14', '5 kW');
    expect(valueOf('R14')).toBe('too much for one');
  });
});
