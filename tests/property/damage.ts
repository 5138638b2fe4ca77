/**
 * Ways to damage a design file. Each takes a sound text and gives bytes that somebody may one day open: a disk's or a
 * cable's faults (flipped, lost, doubled and swapped bytes), an editor's (values of another type, missing and doubled
 * parts, wrong sizes), and an attacker's (huge numbers, deep nesting, prototypes).
 */
import { pick, type Random, whole } from './random-edit.ts';

export type Damage = (random: Random, text: string) => Uint8Array;

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

export const damages: Readonly<Record<string, Damage>> = {
  'flipped bits': (random, text) => {
    const bytes = bytesOf(text);
    for (let left = 1 + whole(random, 5); left > 0; left--) {
      bytes[whole(random, bytes.length)]! ^= 1 << whole(random, 8);
    }
    return bytes;
  },
  'another byte': (random, text) => {
    const bytes = bytesOf(text);
    bytes[whole(random, bytes.length)] = whole(random, 256);
    return bytes;
  },
  'cut short': (random, text) => {
    const bytes = bytesOf(text);
    return bytes.subarray(0, whole(random, bytes.length));
  },
  'a lost block': (random, text) => {
    const bytes = bytesOf(text);
    const from = whole(random, bytes.length);
    const to = Math.min(bytes.length, from + 1 + whole(random, 200));
    return Uint8Array.from([...bytes.subarray(0, from), ...bytes.subarray(to)]);
  },
  'a block of zeros': (random, text) => {
    const bytes = bytesOf(text);
    const from = whole(random, bytes.length);
    return bytes.fill(0, from, from + 1 + whole(random, 512));
  },
  'a doubled block': (random, text) => {
    const from = whole(random, text.length);
    const to = from + 1 + whole(random, 200);
    return bytesOf(text.slice(0, to) + text.slice(from));
  },
  'a character more': (random, text) => {
    const at = whole(random, text.length);
    return bytesOf(
      text.slice(0, at) + pick(random, [...'{}[]",:0.-y \n\\u\u0000\ud83e\udea2']) + text.slice(at),
    );
  },
  'swapped lines': (random, text) => {
    const lines = text.split('\n');
    const [a, b] = [whole(random, lines.length), whole(random, lines.length)];
    [lines[a], lines[b]] = [lines[b]!, lines[a]!];
    return bytesOf(lines.join('\n'));
  },
  'a lost line': (random, text) => {
    const lines = text.split('\n');
    lines.splice(whole(random, lines.length), 1);
    return bytesOf(lines.join('\n'));
  },
  'a doubled line': (random, text) => {
    const lines = text.split('\n');
    const at = whole(random, lines.length);
    lines.splice(at, 0, lines[at]!);
    return bytesOf(lines.join('\n'));
  },
  'a value of another kind': (random, text) =>
    inside(random, text, (holder, key) => put(holder, key, pick(random, odd))),
  'a missing value': (random, text) =>
    inside(random, text, (holder, key) => {
      if (Array.isArray(holder)) holder.splice(Number(key), 1);
      else delete holder[key];
    }),
  'a doubled value': (random, text) =>
    inside(random, text, (holder, key) => {
      if (Array.isArray(holder)) holder.push(holder[Number(key)]);
      else put(holder, `${key}2`, holder[key]);
    }),
  'a huge number': (random, text) => {
    const numbers = [...text.matchAll(/\b\d+(\.\d+)?\b/g)];
    const { index, 0: number } = pick(random, numbers);
    const huge = pick(random, [
      '1e999',
      '-1e999',
      '9007199254740993',
      '1e-400',
      '99999999999999999999',
      '-0',
      '4294967297',
    ]);
    return bytesOf(text.slice(0, index) + huge + text.slice(index + number.length));
  },
  'deep nesting': (random, text) => {
    const levels = pick(random, [20, 31, 32, 33, 1_000, 100_000]);
    const [open, close] = pick(random, [
      ['[', ']'],
      ['{"a":', '}'],
    ] as const);
    const deep = `${open.repeat(levels)}1${pick(random, [close.repeat(levels), ''])}`;
    return bytesOf(text.replace('{', `{"deep":${deep},`));
  },
  'a prototype': (random, text) => {
    const key = pick(random, [
      '__proto__',
      'constructor',
      'prototype',
      'toString',
      'hasOwnProperty',
      '\\u005f_proto__',
    ]);
    const value = pick(random, ['{"polluted":true}', 'null', '{"prototype":{"polluted":true}}', '[]', '1']);
    const braces = [...text.matchAll(/\{/g)];
    const { index } = pick(random, braces);
    return bytesOf(`${text.slice(0, index + 1)}"${key}":${value},${text.slice(index + 1)}`);
  },
  'wrong sizes': (random, text) => {
    const key = pick(random, ['columns', 'rows', 'version']);
    const size = pick(random, [
      '0',
      '-1',
      '1',
      '2',
      '7',
      '13',
      '1000',
      '1001',
      '2000',
      '2001',
      '1.5',
      '1e9',
      'null',
      '"12"',
    ]);
    return bytesOf(text.replace(new RegExp(`"${key}": ?\\d+`), `"${key}": ${size}`));
  },
  'another name for a thing': (random, text) => {
    const names = [...text.matchAll(/"(y\d+|layer-\d|ground|picture|[A-Za-z0-9@&])"/g)];
    const { index, 0: name } = pick(random, names);
    // Another thing's name where there is one of its kind, so that two things share it.
    const alike = names.map(([each]) => each).filter((each) => each !== name && each.length === name.length);
    const strange = ['"y1"', '"y64"', '"y65"', '"y0"', '"y01"', '"a"', '"layer-1"', '""', '"__proto__"'];
    const other = pick(random, alike.length > 0 && random() < 0.5 ? alike : strange);
    return bytesOf(text.slice(0, index) + other + text.slice(index + name.length));
  },
  'a torn picture': (random, text) => {
    const lines = [...text.matchAll(/(?<=")[A-Za-z0-9+/]{40,}=*(?=")/g)];
    const { index: at, 0: line } = lines.length > 0 ? pick(random, lines) : { index: 0, 0: text };
    const lost = at + Math.floor(random() * line.length);
    return bytesOf(text.slice(0, lost) + text.slice(lost + 1));
  },
  'a mangled row': (random, text) => {
    const rows = [...text.matchAll(/"\d+(y\d+|\.|-)( \d+(y\d+|\.|-))*"/g)];
    const { index, 0: row } = pick(random, rows);
    return bytesOf(text.slice(0, index) + mangled(random, row) + text.slice(index + row.length));
  },
};

const odd: readonly unknown[] = [
  null,
  true,
  false,
  0,
  -1,
  1.5,
  1e300,
  '',
  'y1',
  'y65',
  '1y1',
  'x'.repeat(70_000),
  [],
  [[]],
  [null],
  {},
  { rows: [] },
  Array.from({ length: 300 }, () => ({})),
];

const manglings: readonly ((random: Random, row: string) => string)[] = [
  (_, row) => row.replace(/\d+/, '0'),
  (_, row) => row.replace(/\d+/, (count) => `${Number(count) + 1}`),
  (_, row) => row.replace(/\d+/, '99999999999999999999'),
  (_, row) => row.replace(/\d+/, '-1'),
  (_, row) => row.replace(/\d+/, ''),
  (_, row) => row.replace(/\d+/, (count) => `0${count}`),
  (_, row) => row.replace(/y\d+/, 'y99'),
  (_, row) => row.replace(/y\d+/, 'y'),
  (_, row) => row.replace(/y\d+/, 'z1'),
  (_, row) => row.replaceAll(' ', '  '),
  (_, row) => row.replaceAll(' ', ''),
  (_, row) => row.replace(/"$/, ' "'),
  (_, row) => row.replace(/^"/, '" '),
  (_, row) => row.replace(/"$/, ' 1."'),
  () => '""',
  () => `"${'1y1 '.repeat(20_000)}"`,
  (random, row) => {
    const at = 1 + whole(random, row.length - 2);
    return row.slice(0, at) + row.slice(at + 1);
  },
];

function mangled(random: Random, row: string): string {
  return pick(random, manglings)(random, row);
}

type Holder = Record<string, unknown> | unknown[];

/** Changes one member, anywhere in the file's value. */
function inside(
  random: Random,
  text: string,
  change: (holder: Holder & Record<string, unknown>, key: string) => void,
): Uint8Array {
  const value = JSON.parse(text) as Record<string, unknown>;
  const places: [Holder, string][] = [];
  collect(value, places);
  const [holder, key] = pick(random, places);
  change(holder as Holder & Record<string, unknown>, key);
  return bytesOf(JSON.stringify(value));
}

function collect(holder: Holder, places: [Holder, string][]): void {
  for (const [key, value] of Object.entries(holder)) {
    places.push([holder, key]);
    if (typeof value === 'object' && value !== null) collect(value as Holder, places);
  }
}

function put(holder: Holder & Record<string, unknown>, key: string, value: unknown): void {
  holder[key] = value;
}
