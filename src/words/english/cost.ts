/** Light against cost, drawn and in words. */
export const cost = {
  title: 'Light against cost',
  what: 'Options by what they cost and how much of the wanted light they reach.',
  options: 'Options',
  optionsHelp: 'A column of names.',
  light: 'From wanted',
  lightHelp: 'Stops over or under, in the same rows.',
  cost: 'Cost',
  costHelp: 'In the same rows.',
  none: 'No row has both light and cost yet.',
  tooMany: (most: number, found: number) =>
    `A figure shows up to ${most} options; here are ${found}.`,
  wanted: 'wanted',
  stops: 'stops',
  fits: 'Fits',
  fitsHelp: 'No where an option will not do whatever its light, in the same rows.',
  standings: {
    best: 'none cheaper is as bright',
    passed: 'dearer and no brighter',
    unfit: 'does not fit',
  },
  count: (count: number) => (count === 1 ? 'One option.' : `${count} options.`),
  cheapestEnough: (name: string, cost: string, off: string) =>
    `The cheapest that reaches the wanted light is ${name}, at ${cost} (${off}).`,
  noneReaches: (name: string, off: string) =>
    `None that fits reaches the wanted light; the brightest is ${name} (${off}).`,
  passedOver: (names: string, count: number) =>
    `${names} ${count === 1 ? 'is' : 'are'} dearer than another that is as bright.`,
  unfit: (names: string, count: number) => `${names} ${count === 1 ? 'does' : 'do'} not fit.`,
} as const;
