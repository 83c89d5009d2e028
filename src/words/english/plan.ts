import { plural } from './plural.ts';

const shown = 4;

/** The order out of the rigs, and the order of shooting. */
export const plan = {
  collect: 'Collect the rigs',
  noPackage: 'This book has no order yet: add the sheet “Package”, then collect again.',
  noColumns:
    'The order has lost its captions “Days”, “Needed” or “The order”: nothing was collected.',
  noRigs: 'This book has no rig to collect: add the sheet “Set plan” and place its lights.',
  fixture: 'fixture',
  on: (item: string, rig: string) => `${item} on ${rig}`,
  allThere: 'every fixture of the rigs is in this order',
  notThere: (items: readonly string[]) =>
    `${plural(items.length, 'item')} of the rigs ${items.length === 1 ? 'is' : 'are'} not in this order: ${items.slice(0, shown).join(', ')}${items.length > shown ? `, and ${items.length - shown} more` : ''}`,
  nothingToCollect: 'Every fixture of the rigs is in the order already.',
  collected: (items: number) =>
    `${plural(items, 'item')} of the rigs ${items === 1 ? 'is' : 'are'} in the order now. Look at stands, spares, weight and rate.`,
  whichPlace: (rig: string) => `Nothing says which place ${rig} is of: type it under Place.`,
  order: 'Order the set-ups by their light',
  noList:
    'This sheet has no list of set-ups with “Set-up”, “Place”, “Shot as”, “Shooting takes” and “To rig”: go to a running order first.',
  nothingToOrder: 'There are fewer than two set-ups to put in order.',
  cannotStay: (setUp: string, count: number) =>
    `${setUp} is to stay, but its number is none from 1 to ${count}, or another set-up stays there.`,
  moves: (moves: number, hours: string) => `${plural(moves, 'move')} and ${hours} h`,
  ordered: (before: string, after: string, isBest: boolean) =>
    `${before} before, ${after} now: ${isBest ? 'no order takes less' : 'a good order, not proven to be the best of so many'}. It knows nothing of daylight, tide or people.`,
  asGood: (now: string, isBest: boolean) =>
    isBest
      ? `It is in the best order already: ${now}.`
      : `No better order was found: ${now}. With so many set-ups that is no proof.`,
} as const;
