let asked = false;

/**
 * Asks the browser, once, not to clear the books when the device runs short of room. Some browsers
 * ask their person in turn: so only when there is something to keep.
 */
export async function askToStay(
  storage: Pick<StorageManager, 'persist' | 'persisted'> | undefined,
): Promise<void> {
  if (asked || !storage) return;
  asked = true;
  try {
    if (!(await storage.persisted())) await storage.persist();
  } catch {
    // Without it the books are kept as long as the browser likes.
  }
}
