/**
 * The canonical text of a design: the same design always gives the same bytes. Keys stand in the schema's order, then
 * those that this version does not know, sorted; a row of cells has a line of its own, and so has each yarn, so that
 * what changed can be seen line by line.
 */
import { z } from 'zod';
import { faultOf } from './check-design.ts';
import type { Design } from './design.ts';
import { writeRow } from './row-text.ts';
import { DESIGN_FORMAT, DESIGN_VERSION, designFileSchema } from './schema.ts';
import { textProblem } from './text-problem.ts';

/**
 * Throws where the design breaks a law of the file (`faultOf` says which): a file that could not be opened again must
 * never take the place of one that can.
 */
export function writeDesign(design: Design): string {
  const fault = faultOf(design);
  if (fault) throw new Error(`the design can't be written: ${fault}`);
  const layers = design.layers.map((layer) => ({ ...layer, rows: layer.rows.map(writeRow) }));
  const file = { ...design, format: DESIGN_FORMAT, version: DESIGN_VERSION, layers };
  const text = `${lines(file, order, '')}\n`;
  const tooMuch = textProblem(text);
  if (tooMuch) throw new Error(`the design can't be written: ${tooMuch.sentence}`);
  return text;
}

/** The keys of an object in the schema's order, each with the order of what lies below it. */
type Order = ReadonlyMap<string, Order | null> | null;

const order = orderOf(designFileSchema);

function orderOf(schema: unknown): Order {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodNullable) return orderOf(schema.unwrap());
  if (schema instanceof z.ZodArray) return orderOf(schema.element);
  if (!(schema instanceof z.ZodObject)) return null;
  return new Map(Object.entries(schema.shape).map(([key, below]) => [key, orderOf(below)]));
}

/** A value as JSON: one line where it is flat and short by nature, else a line for each member. */
function lines(value: unknown, below: Order, indent: string): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const isList = Array.isArray(value);
  const members = isList
    ? value.map((each) => lines(each, below, `${indent}  `))
    : entries(value as Record<string, unknown>, below).map(
        ([key, each]) => `${JSON.stringify(key)}: ${lines(each, below?.get(key) ?? null, `${indent}  `)}`,
      );
  const [open, close] = isList ? '[]' : '{}';
  if (members.length === 0) return `${open}${close}`;
  if (isFlat(value)) return isList ? `[${members.join(', ')}]` : `{ ${members.join(', ')} }`;
  return `${open}\n${indent}  ${members.join(`,\n${indent}  `)}\n${indent}${close}`;
}

function entries(value: Record<string, unknown>, below: Order): [string, unknown][] {
  const known = [...(below?.keys() ?? [])].filter((key) => Object.hasOwn(value, key));
  const unknown = Object.keys(value).filter((key) => !below?.has(key));
  unknown.sort();
  return [...known, ...unknown]
    .map((key): [string, unknown] => [key, value[key]])
    .filter(([, each]) => each !== undefined);
}

/** Objects of plain values and lists of numbers: short, and read at one glance. */
function isFlat(value: object): boolean {
  const isList = Array.isArray(value);
  return Object.values(value).every((each) => {
    if (typeof each === 'object' && each !== null) return Object.keys(each).length === 0;
    return !isList || typeof each !== 'string';
  });
}
