/** Browsers say so when a page is laid out once more than they like; nothing is wrong then. */
const harmless = /^ResizeObserver loop/;

/** Hears of whatever nobody caught, so that nothing breaks unseen. */
export function hearUnexpected(heard: (cause: unknown) => void): void {
  addEventListener('error', ({ message, error, filename }) => {
    // What extensions of the browser throw is not ours.
    const ours = filename.startsWith(location.origin);
    if (ours && !harmless.test(message)) heard(error ?? message);
  });
  addEventListener('unhandledrejection', ({ reason }) => heard(reason));
}
