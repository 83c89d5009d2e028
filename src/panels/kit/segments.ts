import { html } from 'lit-html';

export interface Choice<Value extends string> {
  readonly value: Value;
  readonly label: string;
  /** For screen readers, where the label is short: "footcandles". */
  readonly spoken?: string;
}

/** Two or three ways of saying the same thing, one of them in force. */
export function segments<Value extends string>(
  name: string,
  legend: string,
  choices: readonly Choice<Value>[],
  chosen: Value,
  choose: (value: Value) => void,
) {
  return html`<div class="switch" role="radiogroup" aria-label=${legend}>
    ${choices.map(
      ({ value, label, spoken }) =>
        html`<label
          ><input
            type="radio"
            name=${name}
            value=${value}
            aria-label=${spoken ?? label}
            .checked=${value === chosen}
            @change=${() => choose(value)}
          />${label}</label
        >`,
    )}
  </div>`;
}
