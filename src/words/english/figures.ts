/** The figures of a sheet. */
export const figures = {
  first: 'It is the first.',
  last: 'It is the last.',
  listed: (parts: readonly string[]) => {
    const last = parts.at(-1) ?? '';
    return parts.length < 2 ? last : `${parts.slice(0, -1).join(', ')} and ${last}`;
  },
  figure: 'Figure',
  unknownKind: (kind: string) => `This version draws no figure of the kind “${kind}”. It is kept.`,
  cellsGone: (input: string) => `The cells of “${input}” are gone. Choose others, or undo.`,
  title: 'Figures',
  add: 'Add a figure',
  wholePage: 'Figures over the whole page',
  ofSheet: 'Figures of this sheet',
  menuOf: (title: string) => `Menu of ${title}`,
  inWords: 'In words',
  notLoaded: 'What draws figures has not loaded yet. Ask again in a moment.',
  called: (title: string) => `Figure ${title}`,
  titleField: 'Title',
  moreCells: 'More cells',
  keep: 'Keep',
  addIt: 'Add the figure',
  kind: 'Kind',
  takeSelected: (input: string) => `${input}: take the selected cells`,
  selected: 'Selected',
  nothingDrawn: 'There is nothing to be drawn yet.',
  describe: 'Title, cells, choices',
  moveUp: 'Move up',
  moveDown: 'Move down',
  saveSvg: 'Save as a drawing (SVG)',
  savePng: 'Save as a picture (PNG)',
  remove: 'Remove the figure',
  hands: 'What can be moved',
  handsHint: (usual: string, fine: string, far: string) =>
    `Drag what stands in it, or move it by arrow keys: ${usual} at a time, with Shift ${fine}, with Ctrl ${far}.`,
  placeInFigure: 'Move something in a figure',
  placeOf: (name: string) => `Move ${name}`,
  axisAt: (axis: string, length: string) => `${axis} ${length}`,
  byFormula: (where: string, name: string) =>
    `A formula works out ${where} of ${name}. Type a number there to move it by hand.`,
  sayWhich: (input: string) => `Say which cells hold “${input}”.`,
} as const;
