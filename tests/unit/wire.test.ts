import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromBase64, toBase64 } from '../../renderer/bridge/base64.ts';
import { jsonLines } from '../../renderer/bridge/json-lines.ts';
import { packBytes, unpackBytes } from '../../shared/wire.ts';

describe('bytes on the wire', () => {
  it('come back as they were, wherever they stand, and so does everything else', () => {
    const json = fc.jsonValue({ maxDepth: 4 }).filter((value) => !JSON.stringify(value).includes('$bytes'));
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), json, (bytes, value) => {
        const plain: unknown = JSON.parse(JSON.stringify(value));
        const line = JSON.stringify(packBytes({ bytes, list: [bytes, plain] }, toBase64));
        expect(unpackBytes(JSON.parse(line), fromBase64)).toEqual({ bytes, list: [bytes, plain] });
      }),
      { seed: 5, numRuns: 500 },
    );
  });

  it('are the base64 of RFC 4648, in the page as in the host', () => {
    // RFC 4648, section 10: test vectors.
    const vectors = ['', 'Zg==', 'Zm8=', 'Zm9v', 'Zm9vYg==', 'Zm9vYmE=', 'Zm9vYmFy'];
    for (const [length, text] of vectors.entries()) {
      const bytes = new Uint8Array(Buffer.from('foobar').subarray(0, length));
      expect(toBase64(bytes)).toBe(text);
      expect(fromBase64(text)).toEqual(bytes);
    }
    const large = Uint8Array.from({ length: 100_003 }, (_, i) => (i * 7) % 256);
    expect(toBase64(large)).toBe(Buffer.from(large).toString('base64'));
  });

  it('are taken for bytes only where nothing stands beside them', () => {
    const value = { $bytes: 'Zg==', other: 1 };
    expect(unpackBytes(value, fromBase64)).toEqual(value);
    expect(unpackBytes({ $bytes: 7 }, fromBase64)).toEqual({ $bytes: 7 });
  });

  it('reach no prototype', () => {
    const sent: unknown = JSON.parse(
      '{"__proto__": {"poisoned": true}, "a": [{"__proto__": {"poisoned": true}}]}',
    );
    const read = unpackBytes(sent, fromBase64) as { a: object[] };
    expect(Object.hasOwn(read, '__proto__')).toBe(true);
    expect('poisoned' in read || 'poisoned' in read.a[0]! || 'poisoned' in {}).toBe(false);
  });
});

describe('lines of JSON', () => {
  it('are read whole, however the network cuts them', async () => {
    const bytes = Buffer.from('{"a":"ж🦉"}\n[1]\n"no end');
    for (const size of [1, 2, 3, 5, bytes.length]) {
      const parts = Array.from(
        { length: Math.ceil(bytes.length / size) },
        (_, i) => new Uint8Array(bytes.subarray(i * size, (i + 1) * size)),
      );
      const read: unknown[] = [];
      const body = new ReadableStream<Uint8Array<ArrayBuffer>>({
        start(stream) {
          for (const part of parts) stream.enqueue(part);
          stream.close();
        },
      });
      for await (const line of jsonLines(new Response(body))) read.push(line);
      expect(read).toEqual([{ a: 'ж🦉' }, [1]]);
    }
  });
});
