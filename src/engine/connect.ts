import type { Book } from '../book/types.ts';
import { evaluateText } from './evaluate.ts';
import { explainCell } from './explain.ts';
import { follow } from './follow.ts';
import { inspectable } from './inspect.ts';
import { Model } from './model.ts';
import { readValue } from './read.ts';
import type { CellPlace, CellValue, Engine, EngineOptions, Recalculated } from './types.ts';

/** Calculates a book, now and after each of its changes. */
export function connectEngine(book: Book, options: EngineOptions = {}): Engine {
  const model = new Model(book.document, options);
  const listeners = new Set<(recalculated: Recalculated) => void>();

  const stop = book.listen((change) => {
    const recalculated = follow(model, change);
    const { all, cells, reread = [] } = recalculated;
    if (!all && cells.length === 0 && reread.length === 0) return;
    for (const heard of [...listeners]) heard(recalculated);
  });

  function valueOf(place: CellPlace): CellValue {
    const address = model.address(place);
    return address === undefined
      ? null
      : readValue(model, model.calculator.getCellValue(address), place, place.sheet);
  }

  const engine: Engine = {
    valueOf,
    quantityOf: (place) => model.quantities.of(place),
    explain: (place) => explainCell(model, place, valueOf(place)),
    evaluate: (formula, sheet) => evaluateText(model, formula, sheet),
    listen(heard) {
      listeners.add(heard);
      return () => void listeners.delete(heard);
    },
    dispose() {
      stop();
      listeners.clear();
      model.close();
    },
  };
  return inspectable(engine, model);
}
