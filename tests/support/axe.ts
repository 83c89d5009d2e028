import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** How bad axe-core calls what it finds, from the least. */
const impacts = ['minor', 'moderate', 'serious', 'critical'] as const;

export interface AxeFault {
  readonly id: string;
  readonly target: string;
  readonly html: string;
}

/** The rules of axe-core whose outcome hangs on colours: in another theme the others find the same. */
const colourRules = ['color-contrast', 'link-in-text-block'];

/**
 * What axe-core finds on the page or in a part of it, as bad as `least` or worse.
 * It runs in the page itself, which has no frames, and does not write out what is well: that
 * takes a sixth of the time and finds the same.
 * @param asked by all its rules, or by those of colour alone
 */
export async function axeFaults(
  page: Page,
  part?: string,
  least: (typeof impacts)[number] = 'minor',
  asked: 'all' | 'colours' = 'all',
): Promise<AxeFault[]> {
  const axe = new AxeBuilder({ page }).setLegacyMode(true).options({ resultTypes: ['violations'] });
  if (part !== undefined) axe.include(part);
  if (asked === 'colours') axe.withRules(colourRules);
  const { violations, passes } = await axe.analyze();
  if (passes.length <= (asked === 'all' ? 10 : 0))
    throw new Error(`axe hardly looked at anything in ${part ?? 'the page'}.`);
  return violations
    .filter(({ impact }) => !impact || impacts.indexOf(impact) >= impacts.indexOf(least))
    .flatMap(({ id, nodes }) =>
      nodes.map(({ target, html }) => ({
        id,
        target: target.join(' '),
        html: html.slice(0, 160),
      })),
    );
}
