import { html } from 'lit-html';
import type { AnyDefinition, Example, Parameter, ResultKind } from '../../../functions/define.ts';
import { sources } from '../../../functions/sources.ts';
import { openDialogBox } from '../kit/dialog.ts';
import { measure } from '../kit/quantities.ts';
import { isOptional } from '../entry/helper.ts';
import type { Shell } from '../frame.ts';
import type { Workbook } from '../workbook.ts';

/** Everything the library says about one function, from its definition. */
export function functionCard(workbook: Workbook, shell: Shell, name = ''): void {
  openDialogBox({ title: name, className: 'card-box' }, (close) => {
    const definition = workbook.functions.value.find((one) => one.name === name);
    if (!definition) return html`<p class="box-body">The library has no function of this name.</p>`;
    return card(definition, (other) => {
      close();
      shell.open('function', other);
    });
  });
}

function card(definition: AnyDefinition, open: (name: string) => void) {
  const { formula } = definition;
  return html`<div class="box-body prose">
    <p class="lead">${definition.summary}</p>
    <p>${definition.job}</p>
    <dl class="parameters">
      ${definition.parameters.map(
        (one) =>
          html`<div>
            <dt>${one.name}${isOptional(one) ? html` <small>${unsaid(one)}</small>` : ''}</dt>
            <dd>${one.help} <small>${measure(one.quantity)}</small></dd>
          </div>`,
      )}
      <div>
        <dt>gives</dt>
        <dd>${given(definition.result)}</dd>
      </div>
    </dl>
    <h3>for example</h3>
    <ul class="examples">
      ${definition.examples.map(
        (example) =>
          html`<li>
            <code>${written(definition.name, example)}</code> = <b>${result(example)}</b>
            <span>${example.why}</span>
          </li>`,
      )}
    </ul>
    <h3>how it is worked out</h3>
    <p class="worked formula">
      ${typeof formula === 'string' ? formula : (formula.equation ?? formula.none)}
    </p>
    <p>${definition.limits}</p>
    <p class="faint">
      ${definition.sources
        .map(({ from, at }) => [sourceTitle(from), at].filter(Boolean).join(', '))
        .join('; ')}
    </p>
    ${
      definition.alike.length > 0
        ? html`<ul class="chips">
            ${definition.alike.map(
              (other) =>
                html`<li>
                  <button class="chip" @click=${() => open(other)}><span>${other}</span></button>
                </li>`,
            )}
          </ul>`
        : ''
    }
  </div>`;
}

function unsaid(one: Parameter): string {
  if (one.default !== undefined) return `if left out: ${String(one.default)}`;
  return one.fromBook ? 'if left out: as the book has it' : 'may be left out';
}

function given(result: ResultKind<readonly Parameter[]>): string {
  return typeof result === 'string' ? measure(result) : `the same as ${result.as}`;
}

function written(name: string, { args }: Example): string {
  const one = (arg: Example['args'][number]): string =>
    Array.isArray(arg)
      ? arg.map((item) => item ?? '').join(', ')
      : typeof arg === 'string'
        ? `"${arg}"`
        : String(arg ?? '');
  return `${name}(${args.map(one).join(', ')})`;
}

/** Six figures show what an example shows. */
function result({ result: value }: Example): string {
  return typeof value === 'number' ? String(Number(value.toPrecision(6))) : String(value);
}

function sourceTitle(name: keyof typeof sources): string {
  return sources[name].title.replace(/\.$/, '');
}
