/**
 * A finished file with its small objects packed into a few streams, and its table of places as a stream too (ISO 32000-1,
 * 7.5.7 and 7.5.8): the structure that is read aloud is hundreds of dictionaries, which take a fifth of a chart's file
 * as they are and next to nothing packed. What every object says stays as it is.
 */
import { deflateSync } from 'node:zlib';

/** Objects to a stream: a reader unpacks all of one to come to any of them. */
const MOST_TO_A_STREAM = 200;

interface FileObject {
  readonly number: number;
  /** All of it, from its number to 'endobj'. */
  readonly bytes: Buffer;
  /** What it says, where that is no stream. */
  readonly value: Buffer | null;
}

/** Where an object is: at a byte of the file, or the how-manieth of which stream. */
type Place = readonly [kind: 1 | 2, at: number, index: number];

/** `bytes` as pdfkit writes them: generation 0 throughout, a table of places at the end. */
export function packObjects(bytes: Uint8Array): Uint8Array {
  const file = Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { head, objects, trailer } = partsOf(file);
  const small = objects.filter(({ value }) => value !== null);
  const places = new Map<number, Place>();
  const written: Buffer[] = [head];
  let at = head.length;
  const write = (number: number, object: Buffer) => {
    places.set(number, [1, at, 0]);
    written.push(object);
    at += object.length;
  };
  for (const { number, bytes: whole, value } of objects) if (value === null) write(number, whole);
  // They are numbered from 1 on, without a gap.
  let next = objects.length + 1;
  for (let from = 0; from < small.length; from += MOST_TO_A_STREAM) {
    const together = small.slice(from, from + MOST_TO_A_STREAM);
    together.forEach(({ number }, index) => {
      places.set(number, [2, next, index]);
    });
    write(next, streamOf(next, together));
    next++;
  }
  const startAt = at;
  write(next, tableOf(next, places, startAt, trailer));
  return Buffer.concat([...written, Buffer.from(`startxref\n${startAt}\n%%EOF\n`)]);
}

function partsOf(file: Buffer): { head: Buffer; objects: FileObject[]; trailer: string } {
  const trailerAt = file.lastIndexOf('trailer\n');
  const [, trailer, startAt] =
    /^trailer\n<<\n(.*)\n>>\nstartxref\n(\d+)\n/s.exec(file.toString('latin1', trailerAt)) ?? [];
  if (trailer === undefined) throw new Error('a file without a table of places');
  const tableAt = Number(startAt);
  // Its first three lines are no objects: 'xref', how many, and the head of those that are free.
  const rows = file.toString('latin1', tableAt, trailerAt).trimEnd().split('\n').slice(3);
  const inOrder = rows
    .map((row, i) => ({ number: i + 1, at: Number(row.slice(0, 10)) }))
    .sort((a, b) => a.at - b.at);
  const objects = inOrder.map(({ number, at }, i) => {
    const whole = file.subarray(at, inOrder[i + 1]?.at ?? tableAt);
    const value = whole.includes('\nstream\n')
      ? null
      : whole.subarray(`${number} 0 obj\n`.length, -'\nendobj\n'.length);
    return { number, bytes: whole, value };
  });
  return { head: file.subarray(0, inOrder[0]!.at), objects, trailer };
}

/** Numbers and places come first, then what the objects say. */
function streamOf(number: number, objects: readonly FileObject[]): Buffer {
  let at = 0;
  const places = objects.map((each) => {
    const place = `${each.number} ${at}`;
    at += each.value!.length + 1;
    return place;
  });
  const first = Buffer.from(`${places.join(' ')}\n`);
  const values = objects.flatMap(({ value }) => [value!, Buffer.from('\n')]);
  return asStream(
    number,
    `/Type /ObjStm\n/N ${objects.length}\n/First ${first.length}`,
    Buffer.concat([first, ...values]),
  );
}

/** A row for each object from 0 on: its kind in one byte, a place in four, an index in one. */
function tableOf(number: number, others: ReadonlyMap<number, Place>, ownAt: number, trailer: string): Buffer {
  const table = Buffer.alloc(ROW * (number + 1));
  for (const [object, [kind, at, index]] of [...others, [number, [1, ownAt, 0]] as const]) {
    table.writeUInt8(kind, ROW * object);
    table.writeUInt32BE(at, ROW * object + 1);
    table.writeUInt8(index, ROW * object + 5);
  }
  const rest = trailer.replace(/^\/Size \d+$/m, `/Size ${number + 1}`);
  return asStream(number, `/Type /XRef\n/W [1 4 1]\n${rest}`, table);
}

const ROW = 6;

function asStream(number: number, entries: string, bytes: Buffer): Buffer {
  const packed = deflateSync(bytes);
  return Buffer.concat([
    Buffer.from(
      `${number} 0 obj\n<<\n${entries}\n/Filter /FlateDecode\n/Length ${packed.length}\n>>\nstream\n`,
      'latin1',
    ),
    packed,
    Buffer.from('\nendstream\nendobj\n'),
  ]);
}
