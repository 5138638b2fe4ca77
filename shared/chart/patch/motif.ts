/**
 * A motif: a patch kept for every design. It is stored as JSON, its cells as a layer's rows are (`row-text.ts`), with
 * the yarns it needs, since another design has other yarns under the same ids.
 */
import { z } from 'zod';
import { codeOf, EMPTY } from '../../design/codes.ts';
import { limits } from '../../design/limits.ts';
import { codesAllowed, readRow, writeRow } from '../../design/row-text.ts';
import { type Yarn, yarnSchema } from '../../design/schema.ts';
import { good, problem, type Result } from '../../result.ts';
import type { Block } from './block.ts';

/** What passes is whole: its rows can be read, and name only its own yarns. */
export const motifSchema = z
  .strictObject({
    id: z.string().min(1).max(100),
    name: z.string().min(1).max(limits.nameChars),
    columns: z.number().int().positive().max(limits.columns),
    /** The yarns of its cells, as they were in the design it came from. */
    yarns: z.array(yarnSchema).max(limits.yarns),
    /** One string a row, top to bottom, left to right as seen from the front. */
    rows: z.array(z.string()).min(1).max(limits.rows),
  })
  .superRefine(({ columns, yarns, rows }, context) => {
    if (new Set(yarns.map(({ id }) => id)).size < yarns.length) {
      context.addIssue({ code: 'custom', path: ['yarns'], message: 'two yarns have one id' });
    }
    const allowed = codesAllowed(yarns);
    for (const [r, row] of rows.entries()) {
      const cells = readRow(row, columns, allowed);
      if (typeof cells === 'string') {
        context.addIssue({ code: 'custom', path: ['rows', r], message: `row ${r + 1} ${cells}` });
      }
    }
  });

export interface Motif {
  /** Given out where motifs are stored; one for each motif. */
  readonly id: string;
  readonly name: string;
  readonly columns: number;
  readonly yarns: readonly Yarn[];
  readonly rows: readonly string[];
}

/**
 * The block as a motif; `yarns` are those of the design it comes from, of which the motif keeps what it uses.
 * Problems: `empty-motif`, `bad-name`.
 */
export function motifOf(id: string, name: string, block: Block, yarns: readonly Yarn[]): Result<Motif> {
  const { columns, cells } = block;
  if (!cells.some((code) => code !== EMPTY)) {
    return problem(
      'empty-motif',
      'The patch has no knots. Choose one with knots in it to keep it as a motif.',
    );
  }
  const shown = name.trim();
  if (shown === '' || shown.length > limits.nameChars) {
    return problem('bad-name', `Give the motif a name of 1 to ${limits.nameChars} characters.`);
  }
  const rows = Array.from({ length: block.rows }, (_, r) =>
    writeRow(cells.subarray(r * columns, (r + 1) * columns)),
  );
  return good({
    id,
    name: shown,
    columns,
    yarns: yarns.filter((yarn) => cells.includes(codeOf(yarn.id))).map(withoutStock),
    rows,
  });
}

/** The motif's cells in the codes of its own yarns. Throws where a row can't be read: `motifSchema` lets none through. */
export function blockOf({ columns, yarns, rows }: Motif): Block {
  const allowed = codesAllowed(yarns);
  const cells = new Uint8Array(columns * rows.length);
  for (const [r, text] of rows.entries()) {
    const row = readRow(text, columns, allowed);
    if (typeof row === 'string') throw new Error(`row ${r + 1} of a motif ${row}`);
    cells.set(row, r * columns);
  }
  return { columns, rows: rows.length, cells };
}

/** What is at home of a yarn is told by designs and the stash; kept with a motif it would be out of date soon. */
function withoutStock({ ownedSkeins, ...yarn }: Yarn): Yarn {
  return yarn;
}
