/** Longer than anything that names one quantity; what is longer is refused unread. */
export const longestEntry = 120;

const shownLength = 40;

/** One spelling for the many spaces, quotes, dashes and slashes that keyboards and files produce. */
export function tidy(text: string): string {
  return text
    .replace(/[\s\u00a0\u2000-\u200b\u202f\u205f\u3000\ufeff]+/gu, ' ')
    .replace(/[’‘′`´]/gu, "'")
    .replace(/[”“″]/gu, '"')
    .replace(/[−–—‐‑]/gu, '-')
    .replace(/[⁄∕]/gu, '/')
    .replace(/[μ]/gu, 'µ')
    .trim();
}

/** What was typed as a sentence shows it, cut where it gets long. */
export function shown(text: string): string {
  // Cut before tidying, so that a huge text costs nothing.
  const start = tidy(text.slice(0, 4 * shownLength));
  return start.length > shownLength || text.length > 4 * shownLength
    ? `${[...start].slice(0, shownLength).join('')}…`
    : start;
}
