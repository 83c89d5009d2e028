import { about } from './english/about.ts';
import { app } from './english/app.ts';
import { archive } from './english/archive.ts';
import { bar } from './english/bar.ts';
import { book } from './english/book.ts';
import { bookFile } from './english/bookFile.ts';
import { broken } from './english/broken.ts';
import { check } from './english/check.ts';
import { choose } from './english/choose.ts';
import { chromaticity } from './english/chromaticity.ts';
import { commandLine } from './english/commandLine.ts';
import { commands } from './english/commands.ts';
import { comparison } from './english/comparison.ts';
import { contents } from './english/contents.ts';
import { cost } from './english/cost.ts';
import { engine } from './english/engine.ts';
import { entry } from './english/entry.ts';
import { evenness } from './english/evenness.ts';
import { exchange } from './english/exchange.ts';
import { falloff } from './english/falloff.ts';
import { figures } from './english/figures.ts';
import { filter } from './english/filter.ts';
import { files } from './english/files.ts';
import { find } from './english/find.ts';
import { fixtures } from './english/fixtures.ts';
import { format } from './english/format.ts';
import { formula } from './english/formula.ts';
import { grid } from './english/grid.ts';
import { instead } from './english/instead.ts';
import { kept } from './english/kept.ts';
import { keyboard } from './english/keyboard.ts';
import { kinds } from './english/kinds.ts';
import { kit } from './english/kit.ts';
import { ladder } from './english/ladder.ts';
import { names } from './english/names.ts';
import { over } from './english/over.ts';
import { page } from './english/page.ts';
import { photo } from './english/photo.ts';
import { photometric } from './english/photometric.ts';
import { plan } from './english/plan.ts';
import { polar } from './english/polar.ts';
import { print } from './english/print.ts';
import { quantity } from './english/quantity.ts';
import { reference } from './english/reference.ts';
import { remarks } from './english/remarks.ts';
import { log } from './english/log.ts';
import { repeat } from './english/repeat.ts';
import { set } from './english/set.ts';
import { settings } from './english/settings.ts';
import { sheet } from './english/sheet.ts';
import { shelf } from './english/shelf.ts';
import { slip } from './english/slip.ts';
import { spectra } from './english/spectra.ts';
import { spectraList } from './english/spectraList.ts';
import { spectrumFigure } from './english/spectrumFigure.ts';
import { renderingFigure } from './english/renderingFigure.ts';
import { start } from './english/start.ts';
import { storage } from './english/storage.ts';
import { target } from './english/target.ts';
import { teach } from './english/teach.ts';
import { templates } from './english/templates.ts';
import { versions } from './english/versions.ts';
import { walk } from './english/walk.ts';

/** Everything the product says, in English: one file for each part of the house. */
export const english = {
  about,
  app,
  archive,
  bar,
  book,
  bookFile,
  broken,
  check,
  choose,
  chromaticity,
  commandLine,
  commands,
  comparison,
  contents,
  cost,
  engine,
  entry,
  evenness,
  exchange,
  falloff,
  figures,
  filter,
  files,
  find,
  fixtures,
  format,
  formula,
  grid,
  instead,
  kept,
  keyboard,
  kinds,
  kit,
  ladder,
  names,
  over,
  page,
  photo,
  photometric,
  plan,
  polar,
  print,
  quantity,
  reference,
  remarks,
  log,
  repeat,
  set,
  settings,
  sheet,
  shelf,
  slip,
  spectra,
  spectraList,
  spectrumFigure,
  renderingFigure,
  start,
  storage,
  target,
  teach,
  templates,
  versions,
  walk,
} as const;
