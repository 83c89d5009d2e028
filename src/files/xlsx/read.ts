import { Counter, foreign, leftBehind, SheetIn, type Foreign } from '../in/collected.ts';
import { most, Refused } from '../in/refused.ts';
import { unzip } from '../in/unzip.ts';
import { local, walk } from '../in/xml.ts';
import type { PlainName } from '../plain/types.ts';
import { bare } from './functions.ts';
import { readNotes } from './notes.ts';
import { readSheet } from './sheet.ts';
import { readStyles } from './styles.ts';
import { readStrings } from './strings.ts';
import { words } from '../../words/words.ts';

const wanted = (name: string) =>
  /\.(?:xml|rels)$/i.test(name) &&
  !/(?:drawings|charts|pivot\w*|externalLinks|slicers|media|diagrams|customXml|docProps|ctrlProps)\//i.test(
    name,
  );

/** Reads a file of ISO/IEC 29500. Throws `Refused`. */
export function readXlsx(bytes: Uint8Array, title: string): Foreign {
  const { parts, others } = unzip(bytes, wanted);
  const packagePart = firstTarget(parts, '_rels/.rels', /officeDocument$/) ?? 'xl/workbook.xml';
  const workbook = parts.get(packagePart);
  if (!workbook) throw new Refused(words.files.notXlsx);
  const targets = targetsOf(parts, packagePart);
  const partOf = (kind: RegExp) => [...targets.values()].find(({ type }) => kind.test(type))?.path;
  const strings = parts.get(partOf(/sharedStrings$/) ?? '');
  const styles = parts.get(partOf(/styles$/) ?? '');
  const around = {
    strings: strings ? readStrings(strings) : [],
    styles: styles ? readStyles(styles) : [],
  };
  const { sheets: listed, names, dates1904 } = readWorkbook(workbook);
  if (listed.length > most.sheets) throw new Refused(words.files.sheets200);
  const counter = new Counter();
  const leftOut = [...leftBehind([...others, ...parts.keys()])];
  if (dates1904) leftOut.push(words.files.from1904);
  const sheets = listed.flatMap(({ name, hidden, id }) => {
    const path = targets.get(id)?.path;
    const part = path === undefined ? undefined : parts.get(path);
    if (path === undefined || !part) return [];
    const sheet = new SheetIn(name, counter);
    sheet.hidden = hidden;
    const notesPart = [...targetsOf(parts, path).values()].find(({ type }) =>
      /\/comments$/.test(type),
    )?.path;
    const notes = notesPart === undefined ? undefined : parts.get(notesPart);
    readSheet(part, sheet, { ...around, notes: notes ? readNotes(notes) : new Map() });
    return [sheet];
  });
  return foreign(title, sheets, names, leftOut);
}

interface Target {
  readonly type: string;
  readonly path: string;
}

/** What a part refers to, by the ids that it uses. */
function targetsOf(parts: ReadonlyMap<string, Uint8Array>, path: string): Map<string, Target> {
  const folder = path.includes('/') ? path.slice(0, path.lastIndexOf('/') + 1) : '';
  const rels = parts.get(`${folder}_rels/${path.slice(folder.length)}.rels`);
  const targets = new Map<string, Target>();
  if (!rels) return targets;
  walk(rels, path, local, {
    open(name, attributes) {
      if (name !== 'Relationship' || attributes['TargetMode'] === 'External') return;
      const target = attributes['Target'] ?? '';
      targets.set(attributes['Id'] ?? '', {
        type: attributes['Type'] ?? '',
        path: resolved(folder, target),
      });
    },
  });
  return targets;
}

function resolved(folder: string, target: string): string {
  if (target.startsWith('/')) return target.slice(1);
  const path = folder.split('/').slice(0, -1);
  for (const part of target.split('/')) {
    if (part === '..') path.pop();
    else if (part !== '.') path.push(part);
  }
  return path.join('/');
}

function firstTarget(
  parts: ReadonlyMap<string, Uint8Array>,
  rels: string,
  type: RegExp,
): string | undefined {
  const part = parts.get(rels);
  let found: string | undefined;
  if (part)
    walk(part, rels, local, {
      open(name, attributes) {
        if (name === 'Relationship' && type.test(attributes['Type'] ?? ''))
          found ??= resolved('', attributes['Target'] ?? '');
      },
    });
  return found;
}

interface Listed {
  readonly name: string;
  readonly id: string;
  readonly hidden: boolean;
}

function readWorkbook(bytes: Uint8Array) {
  const sheets: Listed[] = [];
  const names: PlainName[] = [];
  let dates1904 = false;
  let name: string | undefined;
  let text = '';
  walk(bytes, 'workbook.xml', local, {
    open(element, attributes) {
      if (element === 'workbookPr') dates1904 = /^(?:1|true)$/.test(attributes['date1904'] ?? '');
      if (element === 'sheet') {
        const id = Object.entries(attributes).find(([key]) => /:id$/.test(key))?.[1] ?? '';
        const state = attributes['state'] ?? 'visible';
        sheets.push({ name: attributes['name'] ?? '', id, hidden: state !== 'visible' });
      }
      if (element === 'definedName') {
        // Names of one sheet, and those that programs keep for themselves, have no place here.
        const own = attributes['localSheetId'] !== undefined || attributes['hidden'] === '1';
        name = own || /^_xlnm/.test(attributes['name'] ?? '') ? undefined : attributes['name'];
        text = '';
      }
    },
    text: (more) => void (text += more),
    close(element) {
      if (element === 'definedName' && name !== undefined && text !== '')
        names.push({ name, formula: `=${bare(text)}` });
      if (element === 'definedName') name = undefined;
    },
  });
  return { sheets, names, dates1904 };
}
