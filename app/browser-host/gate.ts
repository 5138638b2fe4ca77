/**
 * Who may talk to the host: only the page that it served itself, in the browser to which it gave its cookie.
 *
 * Another site that the person visits could send requests to this machine, so every request must name this host's own
 * address, must come from this host's own page, and must carry the cookie, which no other site's request does. The
 * cookie is given once, for the word in the start address.
 */
import { randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';

export interface Gate {
  /** The start address's word. It opens once. */
  readonly startWord: string;
  /** The cookie's header for a start word; null where it is not the right one, or was used. */
  enter(word: string): string | null;
  /** Null where the request may be answered, else why not, in words. */
  refusal(request: IncomingMessage, kind: RequestKind): string | null;
}

/** 'start': the start address. 'page': the page and its files. 'bridge': calls and events of the page. */
export type RequestKind = 'start' | 'page' | 'bridge';

/** Which sites a browser may say that a request comes from. The person's own opening of an address is 'none'. */
const sites: Record<RequestKind, readonly string[]> = {
  start: ['none', 'same-origin'],
  page: ['none', 'same-origin'],
  bridge: ['same-origin'],
};

export function createGate(port: number): Gate {
  const host = `127.0.0.1:${port}`;
  const name = `larkrow-${port}`;
  const secret = newWord();
  const startWord = newWord();
  let used = false;
  return {
    startWord,
    enter(word) {
      if (used || !same(word, startWord)) return null;
      used = true;
      return `${name}=${secret}; HttpOnly; SameSite=Strict; Path=/`;
    },
    refusal({ headers, method }, kind) {
      if (headers.host !== host) return 'This address is not the studio’s.';
      const site = headers['sec-fetch-site'];
      if (site !== undefined && !sites[kind].includes(String(site))) return 'Another site asked.';
      const { origin } = headers;
      if (origin !== undefined && origin !== `http://${host}`) return 'Another site asked.';
      // A browser names the origin of every request that could change something.
      if (method === 'POST' && origin === undefined) return 'It is not known who asked.';
      if (kind === 'start') return null;
      return same(cookieOf(headers.cookie ?? '', name), secret)
        ? null
        : 'Open the studio by the address that it printed when it started.';
    },
  };
}

function newWord(): string {
  return randomBytes(24).toString('base64url');
}

function cookieOf(header: string, name: string): string {
  const found = header.split(/; */).find((each) => each.startsWith(`${name}=`));
  return found?.slice(name.length + 1) ?? '';
}

function same(a: string, b: string): boolean {
  const [left, right] = [Buffer.from(a), Buffer.from(b)];
  return left.length === right.length && timingSafeEqual(left, right);
}
