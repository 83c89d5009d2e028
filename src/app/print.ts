import type { Outcome } from '../commands/command.ts';
import { words } from '../words/words.ts';
import type { Desk } from './desk.ts';
import { margin, planPages, type Plan } from './paper.ts';
import { laySheet, type Laying } from './printed-sheet.ts';
import { lookAt } from './look-at.ts';

export interface PrintParts {
  /** The grid on the screen: what is printed is laid before it. */
  readonly grid: HTMLElement;
  readonly locale: string;
  desk(): Desk | null;
  now(): Date;
}

/** The sheet in view, all sheets, the page that hands a set-up over, or pages made elsewhere. */
export type PrintJob =
  | { readonly what: 'sheet' }
  | { readonly what: 'book' }
  | { readonly what: 'handOver'; readonly sheet: string }
  /** Pages that were made elsewhere, each laid by its own hand. */
  | {
      readonly what: 'pages';
      readonly title: string;
      readonly pages: readonly ((host: HTMLElement) => void)[];
    };

export interface Printing {
  /** Fetches the painter, so that the browser's own print finds it. */
  prepareWhenIdle(): void;
  print(job: PrintJob): Promise<Outcome>;
  /** Today, as it stands on paper. */
  date(): string;
}

/**
 * The grid on the screen holds the cells in view only. Whenever the browser is about to print,
 * whoever asked for it, what is to be printed is laid whole, where the screen does not show it.
 */
export function createPrinting({ grid, locale, desk, now }: PrintParts): Printing {
  let laying: Laying | undefined;
  let job: PrintJob = { what: 'sheet' };
  let putAway: () => void = () => undefined;
  const prepare = async () => {
    const [{ openGrid }, printed] = await Promise.all([
      import('../grid/plain/open.ts'),
      import('../panels/handover/printed.ts'),
    ]);
    laying = { openGrid, printed };
  };
  const date = () => new Intl.DateTimeFormat(locale, { dateStyle: 'long' }).format(now());

  const lay = (): void => {
    putAway();
    const laid = desk();
    if (!laid || !laying) return;
    const host = document.createElement('div');
    host.className = 'printed';
    grid.before(host);
    const { title, sheets, settings } = laid.book.document;
    const inView = laid.session.state.sheet;
    const rules: string[] = [];
    const pageOf = (index: number): HTMLElement => {
      const section = document.createElement('section');
      section.style.setProperty('page', `p${String(index)}`);
      host.append(section);
      return section;
    };
    if (job.what === 'pages') {
      const plan = planPages(settings.page, [], 0);
      for (const [index, layPage] of job.pages.entries()) {
        const section = pageOf(index);
        section.style.width = `${String(plan.room)}px`;
        layPage(section);
        shrink(section, plan);
        rules.push(pageRule(index, plan, job.title, date()));
      }
    } else if (job.what === 'handOver') {
      const section = pageOf(0);
      const plan = planPages(settings.page, [], 0);
      section.style.width = `${String(plan.room)}px`;
      laying.printed.layHandOver(section, lookAt(laid), job.sheet, date());
      shrink(section, plan);
      rules.push(pageRule(0, plan, title, date()));
    } else {
      const ids = job.what === 'book' ? sheets.map(({ id }) => id) : [inView];
      for (const [index, id] of ids.entries()) {
        const section = pageOf(index);
        const sheet = laySheet(section, laid, id, laying);
        rules.push(pageRule(index, sheet.plan, `${title} · ${sheet.name}`, date()));
      }
    }
    const pages = new CSSStyleSheet();
    pages.replaceSync(rules.join('\n'));
    document.adoptedStyleSheets.push(pages);

    putAway = () => {
      putAway = () => undefined;
      host.remove();
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== pages);
    };
  };
  addEventListener('beforeprint', lay);
  addEventListener('afterprint', () => {
    putAway();
    // The browser may print after the call has ended, so what was asked for lasts until here.
    job = { what: 'sheet' };
  });

  return {
    date,
    prepareWhenIdle() {
      const soon = () => void prepare().catch(saidWhenAsked);
      // Work that never lets the page be idle must not keep the browser's own print without a painter.
      if ('requestIdleCallback' in window) requestIdleCallback(soon, { timeout: 1_000 });
      else setTimeout(soon, 1000);
    },
    async print(wanted) {
      try {
        await prepare();
      } catch {
        return { ok: false, reason: words.print.notLoaded };
      }
      job = wanted;
      window.print();
      return { ok: true };
    },
  };
}

/** Smaller than this, a page is no longer read at arm's length and goes on to a second one. */
const smallest = 0.62;

/** A page that is to be one page is made as much smaller as that takes. */
function shrink(section: HTMLElement, { paper, room }: Plan): void {
  const height = paper.height - margin * 2.3;
  for (let scale = 1; scale >= smallest; scale -= 0.02) {
    section.style.width = `${String(room / scale)}px`;
    section.style.setProperty('zoom', String(scale));
    if (section.getBoundingClientRect().height <= height) return;
  }
}

/** Size of the paper, and at the foot of each page what it is, when it was printed, and which it is. */
function pageRule(index: number, { paper, room }: Plan, name: string, date: string): string {
  const foot = `font: 9pt 'Source Sans 3', sans-serif; vertical-align: top; padding-top: 2mm`;
  const { page, of } = words.print;
  return `@page p${String(index)} {
    size: ${String(paper.width)}px ${String(paper.height)}px;
    margin: ${String(margin)}px ${String(margin)}px ${String(margin * 1.3)}px;
    @bottom-left { content: ${quoted(name)}; width: ${String(room * 0.6)}px; text-align: left; ${foot} }
    @bottom-right {
      content: ${quoted(`${date} · ${page} `)} counter(page) ${quoted(` ${of} `)} counter(pages);
      width: ${String(room * 0.4)}px; text-align: right; ${foot}
    }
  }`;
}

/** A text as a string of CSS. */
const quoted = (text: string): string =>
  `'${text.replace(/['\\\p{Cc}]/gu, (sign) => `\\${(sign.codePointAt(0) ?? 0).toString(16)} `)}'`;

/** Nobody has asked for it yet; whoever does hears of it. */
const saidWhenAsked = (): undefined => undefined;
