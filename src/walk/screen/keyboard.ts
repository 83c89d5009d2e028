/** What a hardware keyboard asks for. */
export type Asked = 'main' | 'next' | 'back' | 'undo' | 'redo';

/** Arrows to the sides move the caret while something is being typed. */
const always: Readonly<Record<string, Asked>> = {
  Enter: 'main',
  ArrowDown: 'next',
  ArrowUp: 'back',
};
const whileNothingIsTyped: Readonly<Record<string, Asked>> = {
  ArrowRight: 'next',
  ArrowLeft: 'back',
};

/** Only keys pressed at the reading itself: those at a button or in a note are its own. */
export function askedBy(event: KeyboardEvent, isTyping: boolean): Asked | undefined {
  const atReading = (event.target as HTMLElement).matches('.entry-now, dialog');
  if (!atReading || event.isComposing || event.altKey) return undefined;
  if (event.ctrlKey || event.metaKey) {
    const key = event.key.toLowerCase();
    if (key === 'y') return 'redo';
    return key === 'z' ? (event.shiftKey ? 'redo' : 'undo') : undefined;
  }
  return always[event.key] ?? (isTyping ? undefined : whileNothingIsTyped[event.key]);
}
