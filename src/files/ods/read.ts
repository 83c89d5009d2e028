import { Counter, foreign, leftBehind, type Foreign, type SheetIn } from '../in/collected.ts';
import { Refused } from '../in/refused.ts';
import { unzip } from '../in/unzip.ts';
import { qualified, walk } from '../in/xml.ts';
import { StylesIn } from './readStyles.ts';
import { TableReader } from './table.ts';
import { words } from '../../words/words.ts';

const wanted = (name: string) => /^(?:content|styles|settings)\.xml$|^mimetype$/.test(name);

/** Reads a file of ISO/IEC 26300. Throws `Refused`. */
export function readOds(bytes: Uint8Array, title: string): Foreign {
  const { parts, others } = unzip(bytes, wanted);
  const content = parts.get('content.xml');
  if (!content) throw new Refused(words.files.notOds);
  const styles = new StylesIn();
  const common = parts.get('styles.xml');
  if (common) walk(common, 'styles.xml', qualified, handlersOf(styles));
  const reader = new TableReader(styles, new Counter());
  walk(content, 'content.xml', qualified, {
    open(name, attributes) {
      if (reader.sheet) reader.open(name, attributes);
      else if (!reader.begin(name, attributes)) styles.open(name, attributes);
    },
    text(text) {
      if (reader.sheet) reader.text(text);
      else styles.text(text);
    },
    close(name) {
      if (reader.sheet) reader.close(name);
      else styles.close(name);
    },
  });
  const settings = parts.get('settings.xml');
  if (settings) freeze(settings, reader.sheets);
  return foreign(title, reader.sheets, reader.names, [...leftBehind(others), ...reader.leftOut]);
}

function handlersOf(styles: StylesIn) {
  return {
    open: styles.open.bind(styles),
    text: styles.text.bind(styles),
    close: styles.close.bind(styles),
  };
}

/** Frozen rows and columns are kept with the settings of the view, by the name of the sheet. */
function freeze(bytes: Uint8Array, sheets: readonly SheetIn[]): void {
  let sheet: SheetIn | undefined;
  let item = '';
  let text = '';
  const items = new Map<string, string>();
  const positionOf = (axis: string) =>
    items.get(`${axis}SplitMode`) === '2' ? Number(items.get(`${axis}SplitPosition`)) || 0 : 0;
  walk(bytes, 'settings.xml', qualified, {
    open(name, attributes) {
      text = '';
      item = attributes['config:name'] ?? '';
      if (name !== 'config:config-item-map-entry') return;
      sheet = sheets.find((one) => one.name === item);
      items.clear();
    },
    text: (more) => void (text += more),
    close(name) {
      if (name === 'config:config-item') items.set(item, text);
      if (name !== 'config:config-item-map-entry' || !sheet) return;
      sheet.frozenRows = positionOf('Vertical');
      sheet.frozenColumns = positionOf('Horizontal');
      sheet = undefined;
    },
  });
}
