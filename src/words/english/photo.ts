/** Photos of points. */
export const photo = {
  elsewhere: (name: string) => `${name}: not on this device`,
  photo: 'Photo',
  takeAway: 'Take this photo away',
  called: (name: string) => `Photo ${name}`,
  noPicture: 'This is not a picture that the browser can read. Nothing was changed.',
} as const;
