/** The commands that panels ask for by name. Everything else is found by typing. */
export const verbs = {
  undo: 'edit.undo',
  redo: 'edit.redo',
  setTitle: 'book.rename',
  settings: 'book.settings',
  tolerance: 'sheet.tolerance',
  addSheet: 'sheet.add',
  deleteSheet: 'sheet.delete',
  moveSheet: 'sheet.move',
  duplicateSheet: 'sheet.duplicate',
  sheetProperties: 'sheet.properties',
  setNote: 'cells.note',
  quantity: 'cells.quantity',
  target: 'cells.target',
  format: 'cells.format',
  defineName: 'names.define',
  renameName: 'names.rename',
  deleteName: 'names.delete',
  replaceAll: 'edit.replaceAll',
  newBook: 'book.new',
  openBook: 'book.openKept',
  removeBook: 'book.removeKept',
  saveRaw: 'book.saveRaw',
  openFile: 'book.open',
  sample: 'book.sample',
} as const;

/** Dialogs that ask for what a command needs, by the command's id. */
export const askedBy = {
  'edit.find': 'replace',
  'names.manage': 'names',
  'names.define': 'names',
  'cells.format': 'format',
  'cells.quantity': 'quantity',
  'cells.target': 'target',
  'sheet.properties': 'sheet',
  'sheet.add': 'add-sheet',
  'book.settings': 'settings',
  'view.keyboard': 'keyboard',
  'view.about': 'about',
} as const;

/** Commands that only gestures and dialogs ask for: they need to be told what with. */
export const gestures: ReadonlySet<string> = new Set([
  'cells.type',
  'edit.fill',
  'edit.replaceAll',
  'columns.width',
  'sheet.addContent',
  'sheet.move',
  'sheet.tolerance',
  'names.rename',
  'names.delete',
  'book.rename',
  'book.openKept',
  'book.removeKept',
  'book.saveRaw',
]);
