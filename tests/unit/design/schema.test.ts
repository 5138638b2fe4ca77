import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { designJsonSchema } from '../../../shared/design/design-json-schema.ts';
import { designFileSchema } from '../../../shared/design/schema.ts';
import { askSchema, fieldWords } from '../../../shared/design/schema-fault.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { designFromLetters } from '../../notation.ts';

type Json = Record<string, unknown>;

/** Keys that may be absent, by the object they stand in. */
const untold: Record<string, string[]> = {
  'design.fringe': ['byHandMm'],
  'design.swatches.*': [
    'yarnMm',
    'knots',
    'cordBeforeMm',
    'cordAfterMm',
    'cordDiameterMm',
    'yarnDiameterMm',
    'name',
    'told',
    'date',
  ],
  'design.money': [
    'currency',
    'cordPricePerM',
    'dowelPrice',
    'backingPrice',
    'patternFees',
    'hourlyRate',
    'overheadShare',
    'wholesale',
    'sumTimes',
    'keystoneTimes',
    'retailTimes',
  ],
  design: ['pins', 'bundles', 'money', 'pattern', 'editions'],
  'design.bundles': ['fitted', 'cut', 'labelled', 'plan'],
  'design.pattern': ['parts', 'texts', 'cover', 'labels', 'copy'],
  'design.pattern.labels': ['cordFibre', 'yarnFibre'],
  'design.pattern.texts': [
    'welcome',
    'terms',
    'skill',
    'reading',
    'order',
    'finishing',
    'care',
    'cautions',
    'notes',
  ],
  'design.pattern.copy': ['language', 'ink', 'cells', 'rowsForm', 'rowsBeside', 'leftHanded'],
  'design.editions.*.made': ['rates', 'fitted', 'pattern'],
  'design.editions.*.made.pattern': ['parts', 'texts', 'cover', 'copy', 'coverOf'],
  'design.pins.*': ['toRow', 'toCord'],
  'design.tying': ['reserveShare', 'liveWish'],
  'design.yarns.*': ['price', 'ownedSkeins'],
};

describe('the published JSON Schema', () => {
  it('is the one that the schema makes now; else run: npx tsx build/publish-schema.mjs', () => {
    const stored = new URL('../../../shared/design/larkrow-design.schema.json', import.meta.url);
    expect(JSON.parse(readFileSync(stored, 'utf8'))).toEqual(JSON.parse(JSON.stringify(designJsonSchema())));
  });

  it('lets any further key pass on every level, and asks for every key of ours but those that may be untold', () => {
    for (const [path, object] of objectsIn(designJsonSchema() as Json)) {
      expect(object.additionalProperties, path).toEqual({});
      const optional = Object.keys(object.properties as Json).filter(
        (key) => !((object.required ?? []) as string[]).includes(key),
      );
      // An edition keeps fields of the design as they are there.
      expect(optional, path).toEqual(untold[path] ?? untold[path.replace('editions.*.made.', '')] ?? []);
    }
  });
});

describe('the words for a fault', () => {
  it('stand ready for each value of the schema, and for nothing else', () => {
    expect(Object.keys(fieldWords).sort()).toEqual(['', ...pathsOf(designFileSchema)].sort());
  });

  it('are found for a value that is missing, and for one of another kind', () => {
    const file = JSON.parse(writeDesign(designFromLetters(['ab']))) as Json;
    for (const key of Object.keys(file).filter((each) => each !== 'format')) {
      const { [key]: _, ...rest } = file;
      expect(askSchema(rest)).toEqual({ fault: `${fieldWords[key]![0]} is missing` });
      expect(askSchema({ ...file, [key]: Symbol.iterator })).toEqual({
        fault: `${fieldWords[key]![0]} must be ${fieldWords[key]![1]}`,
      });
    }
  });
});

function objectsIn(schema: Json, path = 'design'): [string, Json][] {
  if (schema.anyOf) return (schema.anyOf as Json[]).flatMap((each) => objectsIn(each, path));
  const below = [
    ...Object.entries((schema.properties ?? {}) as Record<string, Json>),
    ...(schema.items ? [['*', schema.items as Json] as const] : []),
  ];
  const own: [string, Json][] = schema.type === 'object' ? [[path, schema]] : [];
  return [...own, ...below.flatMap(([key, each]) => objectsIn(each, `${path}.${key}`))];
}

function pathsOf(schema: unknown, path: readonly string[] = []): string[] {
  const own = path.length > 0 ? [path.join('.')] : [];
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable)
    return pathsOf(schema.unwrap(), path);
  if (schema instanceof z.ZodArray) return [...own, ...pathsOf(schema.element, [...path, '*'])];
  if (!(schema instanceof z.ZodObject)) return own;
  return [...own, ...Object.entries(schema.shape).flatMap(([key, each]) => pathsOf(each, [...path, key]))];
}
