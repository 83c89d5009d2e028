/** How a value is written. */
export const format = {
  title: 'How it is written',
  only: (address: string) => `${address}. Only how it is written changes; the value stays.`,
  digits: 'Digits after the decimal sign',
  byQuantity: 'as the quantity has it',
  unit: 'Unit',
  byBook: 'as the book says',
  place: 'Place in the cell',
  usualPlace: 'numbers right, words left',
  left: 'left',
  centre: 'centre',
  right: 'right',
  bold: 'Bold',
  italic: 'Italic',
} as const;
