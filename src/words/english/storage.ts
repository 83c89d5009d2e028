/** Why a book could not be kept or read, and what is still safe. */
export const storage = {
  damaged: 'What was kept of the book is damaged, so nothing was opened.',
  full: 'This device has no room left for the book. Your changes are still here: save the book to a file, then make room.',
  forbidden:
    'This browser does not let the book be kept on the device. Your changes are still here: save the book to a file before you close this page.',
  failed:
    'The book could not be kept on this device. Your changes are still here: save the book to a file.',
  elsewhere:
    'This book is open in another tab, and only one tab can keep it. Keep it here with one click, or close it there; if you have changed anything here, save the book to a file first.',
  cleared:
    'What this browser kept of the book has been cleared. Your changes are still here and are kept again in a moment.',
  newer:
    'A newer Halfstop is open in another tab. Your changes are still here: save the book to a file, then reload this page.',
  fullAtStart:
    'This device has no room left for books. You can work all the same: save the book to a file before you close the page.',
  forbiddenAtStart:
    'This browser does not let books be kept on the device. You can work all the same: save the book to a file before you close the page.',
  failedAtStart:
    'The books kept on this device cannot be reached now. You can work all the same: save the book to a file before you close the page.',
  elsewhereAtStart: 'This book is open in another tab. Close it there first.',
  clearedAtStart: 'What this browser kept of the book has been cleared.',
  newerAtStart: 'A newer Halfstop is open in another tab. Reload this page.',
} as const;
