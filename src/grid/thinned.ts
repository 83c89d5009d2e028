import type { GridEvents, GridModel, GridView, Place, Range, Selection } from './contract.ts';
import { seenRows, type SeenRows } from './seen-rows.ts';

type Open = (model: GridModel, events: GridEvents) => GridView;

/**
 * A grid of a sheet whose rows are not all in view: the painter knows only those that are, and the
 * host hears and says places on the whole sheet. `leftOut` is asked each time and must be cheap.
 */
export function thinned(
  model: GridModel,
  events: GridEvents,
  leftOut: () => readonly number[],
  open: Open,
): GridView {
  let known: { readonly of: readonly number[]; readonly rows: SeenRows } | undefined;
  const rows = (): SeenRows => {
    const of = leftOut();
    if (known?.of !== of) known = { of, rows: seenRows(of) };
    return known.rows;
  };
  const out = ({ row, column }: Place): Place => ({ row: rows().onSheet(row), column });
  const into = ({ row, column }: Place): Place => ({ row: rows().inView(row), column });
  const outRange = ({ from, to }: Range): Range => ({ from: out(from), to: out(to) });
  const outAll = (selection: Selection): Selection => rows().selectionOnSheet(selection);
  const { mayEdit, editing, moveLines, point, next, scrolled } = events;

  const view = open(
    {
      get name() {
        return model.name;
      },
      get rowCount() {
        return model.rowCount - leftOut().length;
      },
      get columnCount() {
        return model.columnCount;
      },
      get frozen() {
        const { rows: kept, columns } = model.frozen;
        return { rows: kept - leftOut().filter((row) => row < kept).length, columns };
      },
      columnWidth: (column) => model.columnWidth(column),
      rowLabel: (row) => model.rowLabel(rows().onSheet(row)),
      columnLabel: (column) => model.columnLabel(column),
      cell: (row, column) => model.cell(rows().onSheet(row), column),
      editText: (row, column) => model.editText(rows().onSheet(row), column),
      used() {
        const { rows: used, columns } = model.used();
        return { rows: used - leftOut().length, columns };
      },
    },
    {
      ...events,
      selected: (selection, origin) => events.selected(outAll(selection), origin),
      edit: (place, text, then) => events.edit(out(place), text, then),
      clear: (selection) => events.clear(outAll(selection)),
      fill: (from, to) => events.fill(outRange(from), outRange(to)),
      copy: (event, selection) => events.copy(event, outAll(selection)),
      cut: (event, selection) => events.cut(event, outAll(selection)),
      paste: (event, selection) => events.paste(event, outAll(selection)),
      menu: (request) => events.menu({ ...request, place: out(request.place) }),
      ...(mayEdit && { mayEdit: (place) => mayEdit(out(place)) }),
      ...(editing && { editing: (place, text) => editing(place && out(place), text) }),
      ...(moveLines && {
        moveLines(lines, to) {
          if (lines.kind !== 'rows') return moveLines(lines, to);
          moveLines({ ...lines, ...outRange(lines) }, rows().onSheet(to));
        },
      }),
      ...(point && { point: (range, again) => point(outRange(range), again) }),
      ...(next && {
        next(from, move) {
          const to = next(out(from), move);
          return to && into(to);
        },
      }),
      ...(scrolled && { scrolled: (range) => scrolled(outRange(range)) }),
    },
  );

  return {
    paint(places) {
      if (!places) return view.paint();
      const seen = rows();
      view.paint([...places].filter(({ row }) => seen.has(row)).map(into));
    },
    refresh: () => view.refresh(),
    get selection() {
      return outAll(view.selection);
    },
    select: (selection) => view.select(rows().selectionInView(selection)),
    selectRange: (range, kind) =>
      view.selectRange({ from: into(range.from), to: into(range.to) }, kind),
    scrollTo: (place) => view.scrollTo(into(place)),
    outline: (outlines) =>
      view.outline(
        outlines.flatMap(({ range, as }) => {
          const seen = rows().rangeInView(range);
          return seen ? [{ range: seen, as }] : [];
        }),
      ),
    openEditor: (place, text) => rows().has(place.row) && view.openEditor(into(place), text),
    closeEditor: (how, then) => view.closeEditor(how, then),
    get editorText() {
      return view.editorText;
    },
    get editorCaret() {
      return view.editorCaret;
    },
    setEditorText: (text, caret) => view.setEditorText(text, caret),
    insertInEditor: (text, replace) => view.insertInEditor(text, replace),
    say: (place, sentence) => view.say(into(place), sentence),
    focus: () => view.focus(),
    get hasFocus() {
      return view.hasFocus;
    },
    visible: () => outRange(view.visible()),
    cellRect: (place) => (rows().has(place.row) ? view.cellRect(into(place)) : null),
    setDensity: (density) => view.setDensity(density),
    dispose: () => view.dispose(),
  };
}
