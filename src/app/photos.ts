import type { PhotoFile } from '../book/form/photos.ts';
import type { Photo } from '../book/types.ts';
import { problem } from '../storage/problems.ts';
import type { PhotoStore } from '../storage/photostore.ts';
import { words } from '../words/words.ts';

/** The pictures of the book on the desk, by hash. */
export interface Photos {
  /** Scales a picture down and keeps it; a reason where it is none that can be read. */
  keep(file: File): Promise<Photo | { readonly reason: string }>;
  /** An address for an image; undefined where the picture is not on this device. */
  url(hash: string): Promise<string | undefined>;
  /** Pictures for a file of the book; those not on this device are left out. */
  files(hashes: readonly string[]): Promise<readonly PhotoFile[]>;
  /** Keeps the pictures that came with a file; one that is not what its hash says is left out. */
  takeIn(files: readonly PhotoFile[]): Promise<void>;
  /** Keeps those that this page has seen once more, after the device lost them. */
  keepAgain(): Promise<void>;
  close(): void;
}

/** Pixels of the longer side: enough to see where a lamp stood, little enough for a hundred photos. */
const longest = 1_600;
const quality = 0.82;
const unreadable = words.photo.noPicture;

/** `store` is left out where another tab keeps the book: pictures then last as long as the page. */
export function createPhotos(book: string, store: PhotoStore, isKept: boolean): Photos {
  const held = new Map<string, Blob>();
  const urls = new Map<string, string>();
  const blobOf = async (hash: string): Promise<Blob | undefined> => {
    const known = held.get(hash);
    if (known) return known;
    const bytes = await store.get(book, hash).catch(() => undefined);
    const blob = bytes && new Blob([bytes], { type: 'image/jpeg' });
    if (blob) held.set(hash, blob);
    return blob;
  };
  const put = async (hash: string, bytes: ArrayBuffer): Promise<void> => {
    held.set(hash, new Blob([bytes], { type: 'image/jpeg' }));
    if (isKept) await store.put(book, hash, bytes);
  };

  return {
    async keep(file) {
      const blob = await scaled(file).catch(() => undefined);
      if (!blob) return { reason: unreadable };
      const bytes = await blob.arrayBuffer();
      const hash = await hashOf(bytes);
      try {
        await put(hash, bytes);
      } catch (cause) {
        return { reason: problem(cause).message };
      }
      return { hash, name: file.name.slice(0, 200), size: bytes.byteLength };
    },
    async url(hash) {
      const blob = urls.has(hash) ? undefined : await blobOf(hash);
      if (blob && !urls.has(hash)) urls.set(hash, URL.createObjectURL(blob));
      return urls.get(hash);
    },
    async files(hashes) {
      const found = hashes.map(async (hash): Promise<readonly PhotoFile[]> => {
        const blob = await blobOf(hash);
        return blob ? [{ hash, jpeg: base64(new Uint8Array(await blob.arrayBuffer())) }] : [];
      });
      return (await Promise.all(found)).flat();
    },
    async takeIn(files) {
      for (const { hash, jpeg } of files) {
        const bytes = Uint8Array.from(atob(jpeg), (letter) => letter.charCodeAt(0)).buffer;
        // Where there is no room on the device they are there as long as the page is.
        if ((await hashOf(bytes)) === hash) await put(hash, bytes).catch(() => undefined);
      }
    },
    async keepAgain() {
      for (const [hash, blob] of held)
        await put(hash, await blob.arrayBuffer()).catch(() => undefined);
    },
    close() {
      for (const url of urls.values()) URL.revokeObjectURL(url);
    },
  };
}

/** Drawn anew, so that nothing is left of where and with what it was taken. */
async function scaled(file: Blob): Promise<Blob | undefined> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  const scale = Math.min(1, longest / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return new Promise((resolve) =>
    canvas.toBlob((blob) => resolve(blob ?? undefined), 'image/jpeg', quality),
  );
}

async function hashOf(bytes: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** In pieces: a call takes only so many arguments. */
function base64(bytes: Uint8Array): string {
  const piece = 0x8000;
  let text = '';
  for (let at = 0; at < bytes.length; at += piece)
    text += String.fromCharCode(...bytes.subarray(at, at + piece));
  return btoa(text);
}
