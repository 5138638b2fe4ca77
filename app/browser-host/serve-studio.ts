/** The addresses of the host: the start, the page's files, the bridge's verbs, and its events. */
import type { IncomingMessage, ServerResponse } from 'node:http';
import type { AnswerLine } from '../../shared/wire.ts';
import { packBytes } from '../../shared/wire.ts';
import { type AnswerOptions, answer } from '../services/answer.ts';
import type { PageFiles } from '../services/page/page-files.ts';
import { pageHeaders } from '../services/page/page-policy.ts';
import type { Gate, RequestKind } from './gate.ts';
import { readBody } from './read-body.ts';
import type { Windows } from './windows.ts';

export interface Served {
  readonly gate: Gate;
  readonly page: PageFiles;
  readonly windows: Windows;
  readonly answers: AnswerOptions;
}

const headers = pageHeaders('browser');

export async function serveStudio(
  served: Served,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const address = addressOf(request);
  if (!address) return refuse(response, 400, 'That is no address.');
  const path = address.pathname;
  const kind: RequestKind = path === '/start' ? 'start' : path.startsWith('/bridge/') ? 'bridge' : 'page';
  const refusal = served.gate.refusal(request, kind);
  if (refusal) return refuse(response, 403, refusal);
  if (request.method === 'POST' && kind === 'bridge') {
    return answerCall(served, path.slice('/bridge/'.length), request, response);
  }
  if (request.method !== 'GET') return refuse(response, 405, 'The studio has no such request.');
  if (kind === 'start') return start(served, address.searchParams.get('word') ?? '', response);
  if (path === '/bridge/events') return stream(served, response);
  const file = kind === 'page' ? served.page.get(path) : undefined;
  if (!file) return refuse(response, 404, 'The studio has no such page.');
  response.writeHead(200, { ...headers, 'content-type': file.type, 'content-length': file.bytes.length });
  response.end(file.bytes);
}

function addressOf({ url = '/' }: IncomingMessage): URL | null {
  try {
    return new URL(url, 'http://127.0.0.1');
  } catch {
    return null;
  }
}

export function refuse(response: ServerResponse, status: number, why: string): void {
  if (response.headersSent) {
    response.destroy();
    return;
  }
  response.writeHead(status, {
    ...headers,
    'content-type': 'text/plain; charset=utf-8',
    connection: 'close',
  });
  response.end(`${why}\n`);
}

function start({ gate }: Served, word: string, response: ServerResponse): void {
  const cookie = gate.enter(word);
  if (cookie === null) {
    refuse(response, 403, 'This address was used already. Start Larkrow again for a new one.');
    return;
  }
  response.writeHead(303, { ...headers, 'set-cookie': cookie, location: '/' });
  response.end();
}

function stream({ windows }: Served, response: ServerResponse): void {
  response.writeHead(200, { ...headers, 'content-type': 'application/x-ndjson' });
  windows.join(response);
}

/** A page that goes away, or aborts its request, cancels the call. */
async function answerCall(
  { answers }: Served,
  verb: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const stop = new AbortController();
  response.on('close', () => {
    if (!response.writableFinished) stop.abort();
  });
  const body = await readBody(request, verb);
  if ('status' in body) return refuse(response, body.status, body.why);
  response.writeHead(200, { ...headers, 'content-type': 'application/x-ndjson' });
  const send = (line: AnswerLine) => {
    if (!response.destroyed) response.write(`${JSON.stringify(packBytes(line, toBase64))}\n`);
  };
  const result = await answer(answers, verb, body.args, {
    signal: stop.signal,
    onProgress: (progress) => send({ progress }),
  });
  send({ result });
  response.end();
}

function toBase64(bytes: Uint8Array): string {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length).toString('base64');
}
