import { bookDoors } from './books.ts';
import type { Door } from './door.ts';
import { fileDoors } from './files.ts';
import { typedDoors } from './typed.ts';

/** Every way in that takes what it did not write itself. */
export const doors: readonly Door[] = [...typedDoors, ...fileDoors, ...bookDoors];
