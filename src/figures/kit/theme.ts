/** What figures may be painted with: roles, not colours. */
export const colours = [
  'ink',
  'mute',
  'faint',
  'line',
  'line2',
  'edge',
  'sheet',
  'paper',
  'lampbg',
  'lamp',
  'glow',
  'over',
  'under',
  'ok',
] as const;

export type Theme = Readonly<Record<(typeof colours)[number] | 'font', string>>;

/** The tokens of the page: the picture follows light, dark and print by itself. */
export const pageTheme: Theme = {
  ...(Object.fromEntries(colours.map((name) => [name, `var(--${name})`])) as Theme),
  font: 'var(--sans)',
};

/** For files: the light colours themselves on white, and letters that any machine has. */
export const fileTheme: Theme = {
  ink: '#211d18',
  mute: '#5c5348',
  faint: '#6b6155',
  line: '#e3dacb',
  line2: '#cdc1ae',
  edge: '#857a6b',
  sheet: '#ffffff',
  paper: '#fffdf8',
  lampbg: '#f4e4c6',
  lamp: '#8f5200',
  glow: '#f0ac3c',
  over: '#a33a22',
  under: '#2f5c8f',
  ok: '#3c6b33',
  font: "'Source Sans 3', 'Noto Sans', 'Segoe UI', Helvetica, Arial, sans-serif",
};
