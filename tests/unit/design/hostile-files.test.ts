/**
 * Files that are made to exhaust the reader: each has its answer within two seconds. The processor's time is measured,
 * not the clock's, so that other work on the machine does not count.
 */
import { describe, expect, it } from 'vitest';
import { readDesign } from '../../../shared/design/read-design.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { designFromLetters } from '../../notation.ts';

const text = writeDesign(designFromLetters(['ab']));
const file = JSON.parse(text) as { layers: object[] };
const [layer] = file.layers;

const withKey = (json: string) => text.replace('{', `{${json},`);
const withRows = (layers: number, rows: unknown[]) =>
  JSON.stringify({
    ...file,
    layers: Array.from({ length: layers }, (_, i) => ({ ...layer, id: `l${i}`, rows })),
  });

const hostile: [what: string, make: () => string, outcome: string][] = [
  ['half a million empty objects', () => withKey(`"x": [${'{},'.repeat(490_000)}{}]`), 'opened'],
  [
    'half a million keys',
    () => withKey(`"x": {${Array.from({ length: 490_000 }, (_, i) => `"k${i}":0`).join()}}`),
    'opened',
  ],
  ['128,000 rows of another kind', () => withRows(64, Array(2000).fill(7)), 'damaged'],
  ['128,000 rows of empty lists', () => withRows(64, Array(2000).fill([])), 'damaged'],
  ['rows of 60,000 characters', () => withRows(64, Array(20).fill(`${'1y1 '.repeat(15_000)}1y1`)), 'damaged'],
  ['300,000 yarns', () => JSON.stringify({ ...file, yarns: Array(300_000).fill(0) }), 'too-large'],
  ['300,000 swatches', () => JSON.stringify({ ...file, swatches: Array(300_000).fill({}) }), 'too-large'],
  ['300,000 layers', () => JSON.stringify({ ...file, layers: Array(300_000).fill(null) }), 'too-large'],
  [
    '300,000 fringe lengths',
    () => JSON.stringify({ ...file, fringe: { byHandMm: Array(300_000).fill(null) } }),
    'too-large',
  ],
  [
    '300,000 lines of a picture',
    () => JSON.stringify({ ...file, reference: { picture: Array(300_000).fill(0) } }),
    'too-large',
  ],
  ['80 MB of long texts', () => withKey(`"x": [${`"${'x'.repeat(65_000)}",`.repeat(1_230)}0]`), 'opened'],
  ['80 MB of opening brackets', () => '['.repeat(80_000_000), 'too-large'],
  ['80 MB of closing brackets', () => ']'.repeat(80_000_000), 'not-a-design'],
  ['80 MB of quotes', () => '"'.repeat(80_000_000), 'too-large'],
  ['80 MB of backslashes', () => `"${'\\'.repeat(80_000_000)}`, 'too-large'],
  ['80 MB of commas', () => ','.repeat(80_000_000), 'too-large'],
];

describe('a file with', () => {
  it.each(hostile)(
    '%s has its answer soon',
    (_, make, outcome) => {
      const given = make();
      const start = process.cpuUsage();
      const read = readDesign(given);
      const { user, system } = process.cpuUsage(start);
      const ms = (user + system) / 1_000;
      expect(read.ok ? 'opened' : read.problem.code).toBe(outcome);
      expect(ms).toBeLessThan(2_000);
    },
    60_000,
  );
});
