/** The focus goes to the open function: arrow keys scroll it, and it is read out from its beginning. */
export const toPage = (): void => document.querySelector<HTMLElement>('.reference-page')?.focus();
