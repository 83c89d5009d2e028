/** Falloff with distance, drawn and in words. */
export const falloff = {
  face: (width: string, height: string) => `The face is ${width} by ${height}.`,
  lens: (across: string) => `The face is ${across} across.`,
  fixture: 'Fixture',
  fixtureHelp:
    'A cell with the name of a fixture of this book: its size, and at full its light, are taken where none are given.',
  ofFixture: (name: string) =>
    `Straight ahead of ${name}, its face taken as matt and even: a lens or a reflector falls off otherwise close by. A photometric file describes a clean new fixture.`,
  above: (stops: string) => `${stops} above`,
  below: (stops: string) => `${stops} below`,
  more: (where: string, stops: string) =>
    `From ${where} the inverse square would promise ${stops} more.`,
  less: (where: string, stops: string) =>
    `From ${where} the inverse square would promise ${stops} less.`,
  to: (far: string, tolerance: string) => `to ${far} · ± ${tolerance}`,
  nearTo: (near: string, far: string, tolerance: string) => `${near} to ${far} · ± ${tolerance}`,
  stops: 'stops',
  inverseSquare: 'inverse square',
  fromFace: 'from the face',
  mark: (where: string) => `mark, ${where}`,
  ends: (near: string, nearIs: string, far: string, farIs: string) =>
    `From ${near} away it is ${nearIs} the mark, from ${far} ${farIs} it.`,
  atMark: (where: string, light: string) => `At the mark, ${where} away, it gives ${light}.`,
  rule: 'By the inverse square law: right from five times the widest side of the source on.',
  within: (stops: string) => `within ${stops} of the mark`,
  fromFaceTo: (far: string, within: string) => `From the face to ${far} the light stays ${within}.`,
  fromTo: (near: string, far: string, within: string) =>
    `From ${near} to ${far} the light stays ${within}.`,
  asAt: 'as at',
  asSaid: 'It falls off as the inverse square says.',
  halfToTwice: 'from half to twice the distance',
  quarterToFour: 'from a quarter to four times',
  close: 'close around the mark',
  light: 'Light at the mark',
  distance: 'Distance of the mark',
  tooFar: 'Distance of the mark is too far to be drawn.',
  title: 'Falloff with distance',
  what: 'What a source gives nearer and farther, and the depth that stays within tolerance.',
  lightHelp: 'What this source alone gives there.',
  distanceHelp: 'From the face or the lamp to where the light was metered.',
  width: 'Width of the lit face',
  widthHelp: 'Width and height together draw a matt, evenly lit face beside the inverse square.',
  height: 'Height of the lit face',
  shows: 'Shows',
  empty: (what: string) => `${what} is empty or no number.`,
  aboveZero: (what: string) => `${what} must be above zero to be drawn.`,
} as const;
