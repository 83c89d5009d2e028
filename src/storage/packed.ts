/** A long text as it lies in storage: a tenth of its size where the browser can do that. */
export type Packed = Uint8Array<ArrayBuffer> | string;

export async function pack(text: string): Promise<Packed> {
  if (typeof CompressionStream === 'undefined') return text;
  return new Uint8Array(await through(new Blob([text]), new CompressionStream('gzip')));
}

export async function unpack(packed: Packed): Promise<string> {
  if (typeof packed === 'string') return packed;
  const bytes = await through(new Blob([packed]), new DecompressionStream('gzip'));
  return new TextDecoder().decode(bytes);
}

const through = (blob: Blob, by: CompressionStream | DecompressionStream): Promise<ArrayBuffer> =>
  new Response(blob.stream().pipeThrough(by)).arrayBuffer();

/** The same for the same content and, for all that anyone knows, for no other. */
export async function hashOf(content: string | Uint8Array<ArrayBuffer>): Promise<string> {
  const bytes = typeof content === 'string' ? new TextEncoder().encode(content) : content;
  const digest = await crypto.subtle.digest('SHA-256', bytes);
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
