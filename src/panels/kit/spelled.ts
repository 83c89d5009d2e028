const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
};

/** Signs that the typeface lacks as the figures that it can set: `⅔` as `2/3`. */
export const spelled = (text: string): string =>
  text.replace(/[½⅓⅔¼¾]/g, (sign) => vulgar[sign] ?? sign);
