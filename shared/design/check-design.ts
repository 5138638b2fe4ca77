/**
 * What holds for every design, beyond the shape that the schema gives it. Reading asks it of what came from a file;
 * writing asks it again, so that the studio never makes a file that it would refuse to open.
 */
import { counted } from '../units/counted.ts';
import type { Design } from './design.ts';
import { limits } from './limits.ts';
import { codesAllowed } from './row-text.ts';
import { DESIGN_FORMAT, DESIGN_VERSION, type Pin } from './schema.ts';
import { askSchema, quoted } from './schema-fault.ts';
import { sizeFault } from './size-fault.ts';

/** What is wrong, as words to follow 'The file is damaged: …'; null where the design keeps the law. */
export type Law = (design: Design) => string | null;

/** Laws that tie one part of a design to another. */
export const laws: readonly Law[] = [
  ({ yarns }) => twice('id', 'yarns', yarns),
  ({ yarns }) => twice('symbol', 'yarns', yarns),
  ({ layers }) => twice('id', 'layers', layers),
  ({ yarns, ground }) =>
    yarns.some(({ id }) => id === ground) ? null : `the ground yarn ${ground} is not in the list of yarns`,
  ({ rows, layers }) => {
    const odd = layers.find((layer) => layer.rows.length !== rows);
    return odd ? `layer ${quoted(odd.name)} has ${counted(odd.rows.length, 'row')} instead of ${rows}` : null;
  },
  ({ fringe }) =>
    fringe.shape === 'by-hand' && !fringe.byHandMm
      ? 'the fringe is drawn by hand, but the lengths of its cords are missing'
      : null,
  ({ pins = [] }) => pinFault(pins),
  ({ reference }) => reference && base64Fault(reference.picture, 'the reference picture'),
  ({ pattern }) =>
    pattern?.cover ? base64Fault(pattern.cover.picture, 'the photograph of the cover') : null,
  ({ editions = [] }) => {
    for (const { number, made } of editions) {
      const { cover } = made.pattern ?? {};
      const fault = cover && base64Fault(cover.picture, `the photograph of edition ${number}`);
      if (fault) return fault;
    }
    return null;
  },
];

/** What is wrong with a design in memory, cells and all; null where it can be written and read again. */
export function faultOf(design: Design): string | null {
  const { layers, ...rest } = design;
  const bones = layers.map((layer) => ({ ...layer, rows: [] }));
  const size = sizeFault(design.columns, design.rows, layers.length);
  if (size) return size;
  const answer = askSchema({ ...rest, format: DESIGN_FORMAT, version: DESIGN_VERSION, layers: bones });
  if ('fault' in answer) return answer.fault;
  return brokenLaw(design) ?? cellsFault(design);
}

/** The first of `all` that the design breaks. */
export function brokenLaw(design: Design, all: readonly Law[] = laws): string | null {
  for (const law of all) {
    const fault = law(design);
    if (fault) return fault;
  }
  return null;
}

function cellsFault({ columns, layers, yarns }: Design): string | null {
  const allowed = codesAllowed(yarns);
  for (const layer of layers) {
    for (const [r, row] of layer.rows.entries()) {
      const place = `layer ${quoted(layer.name)}, row ${r + 1}`;
      if (row.length !== columns) return `${place} has ${counted(row.length, 'cell')} instead of ${columns}`;
      for (let c = 0; c < row.length; c++) {
        if (allowed[row[c]!] !== 1)
          return `${place}, cord ${c + 1} has yarn y${row[c]}, which is not in the list`;
      }
    }
  }
  return null;
}

/** Only a carry leads somewhere. */
function pinFault(pins: readonly Pin[]): string | null {
  for (const [i, { kind, toRow, toCord }] of pins.entries()) {
    const leadsOn = toRow !== undefined && toCord !== undefined;
    if (kind === 'carry' && !leadsOn) return `pin ${i + 1} does not say where the strand is carried to`;
    if (kind !== 'carry' && (toRow !== undefined || toCord !== undefined))
      return `pin ${i + 1} leads on to another cell, but is no carry`;
  }
  return null;
}

/** Lines are whole groups of four, so that each can be read by itself; only the last may end in `=`. */
function base64Fault(lines: readonly string[], what: string): string | null {
  const odd = lines.findIndex(
    (line, i) => line.length % 4 !== 0 || (line.endsWith('=') && i < lines.length - 1),
  );
  if (odd >= 0) return `line ${odd + 1} of ${what} is not whole base64`;
  const bytes = lines.reduce((sum, line) => sum + (line.length / 4) * 3, 0);
  const padding = lines.at(-1)?.match(/=*$/)?.[0].length ?? 0;
  return bytes - padding > limits.referenceBytes
    ? `${what} has more than ${limits.referenceBytes} bytes`
    : null;
}

function twice<K extends string>(
  key: K,
  what: string,
  list: readonly Readonly<Record<K | 'name', string>>[],
): string | null {
  const seen = new Map<string, string>();
  for (const each of list) {
    const first = seen.get(each[key]);
    if (first !== undefined) {
      return `the ${what} ${quoted(first)} and ${quoted(each.name)} have the same ${key}, ${each[key]}`;
    }
    seen.set(each[key], each.name);
  }
  return null;
}
