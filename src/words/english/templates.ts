/** The sheets that people start from, as the start page offers them. */
export const templates = {
  key: 'Key, fill and background',
  keyHelp: 'How far each reading is from what was planned, and what closes the gap.',
  survey: 'Reflected survey',
  surveyHelp: 'Where each tone of the frame falls in the camera, and what signal it gives.',
  camera: 'Camera',
  cameraHelp: 'What each camera is set to, what its stop puts at grey, and how they compare.',
  dimming: 'Tungsten dimming',
  dimmingHelp:
    'How warm a tungsten lamp turns as it is dimmed, and how far from the camera’s white.',
  recce: 'Recce',
  recceHelp: 'When the sun is in which window, what daylight gives, and what the house carries.',
  sun: 'Sun',
  sunHelp: 'Where the sun stands through the day, and how much light a clear sky gives.',
  distances: 'Fixtures and distances',
  distancesHelp:
    'What each light gives where it stands, how wide and how soft, and where it should go.',
  setPlan: 'Set plan',
  setPlanHelp: 'Where each light stands and is aimed, and what every point of the set gets of it.',
  backdrop: 'Backdrop',
  backdropHelp:
    'How evenly a backdrop or a screen is lit: highest, lowest, mean, and spread in stops.',
  marks: 'Marks',
  marksHelp: 'What an actor gets on each mark of a move, how soft it is, and how deep it holds.',
  calibration: 'Meter calibration',
  calibrationHelp:
    'How far one meter reads over another, and whether that can be told from the spread.',
  timeline: 'Timeline',
  timelineHelp: 'How one point drifts over the hours, and when it leaves the tolerance.',
  match: 'Match',
  matchHelp:
    'How far each source is off the white, what of the kit brings it there, what it costs.',
  power: 'Power',
  powerHelp: 'What is plugged in where, and whether circuits, leads and supply carry it.',
  compare: 'Compare',
  compareHelp: 'Which fixtures at which distance are enough, what they draw and what they cost.',
  choosing: 'Choosing',
  choosingHelp:
    'What could stand where; the cheapest set that reaches every point is found for you.',
  hire: 'Hire',
  hireHelp: 'What is hired for which place and day, what it costs, and how far off the budget.',
} as const;
