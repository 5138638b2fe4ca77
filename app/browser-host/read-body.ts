/** The arguments in a request's body: JSON within a limit, with its byte arrays back. */
import type { IncomingMessage } from 'node:http';
import { limits } from '../../shared/design/limits.ts';
import { unpackBytes } from '../../shared/wire.ts';

/** Why a body was not read, as the status to answer with. */
export type Refused = { readonly status: 400 | 413 | 415; readonly why: string };

const SMALL_BYTES = 1024 * 1024;
/** A design's text may grow by a third where JSON escapes it; a picture does in base64. */
const LARGE_BYTES = Math.ceil(Math.max(limits.fileBytes, limits.pictureBytes) * 1.5);

/** Verbs that carry a design, a pattern, a picture, a motif or the stash. */
const large = new Set([
  'design.save',
  'design.ofPattern',
  'pattern.save',
  'labels.save',
  'papers.save',
  'parcel.save',
  'png.save',
  'picture.take',
  'picture.chart',
  'motifs.keep',
  'stash.write',
  'imprint.write',
]);

export function bodyLimit(verb: string): number {
  return large.has(verb) ? LARGE_BYTES : SMALL_BYTES;
}

export async function readBody(
  request: IncomingMessage,
  verb: string,
): Promise<{ readonly args: unknown } | Refused> {
  if (!/^application\/json(;|$)/.test(request.headers['content-type'] ?? '')) {
    return { status: 415, why: 'The studio only takes JSON.' };
  }
  const limit = bodyLimit(verb);
  const tooLarge = { status: 413, why: 'That is more than the studio takes at once.' } as const;
  if (Number(request.headers['content-length'] ?? 0) > limit) return tooLarge;
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    length += chunk.length;
    if (length > limit) return tooLarge;
    chunks.push(chunk);
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(Buffer.concat(chunks));
    return { args: unpackBytes(JSON.parse(text), fromBase64) };
  } catch {
    return { status: 400, why: 'The studio could not read that.' };
  }
}

function fromBase64(text: string): Uint8Array {
  if (!/^[A-Za-z0-9+/]*={0,2}$/.test(text)) throw new Error('not base64');
  return new Uint8Array(Buffer.from(text, 'base64'));
}
