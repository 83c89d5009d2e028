/** A small kit for the examples; invented. */
export const exampleKit = [
  ['piece', 'mired', 'duv', 'loss'],
  ['Full orange', 130, 0.001, 0.7],
  ['Half orange', 65, null, 0.4],
  ['Full blue', -130, null, 1.5],
  ['Full magenta', null, -0.008, 0.6],
] as const;
