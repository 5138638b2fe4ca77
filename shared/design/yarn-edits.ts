/**
 * Edits of the design's yarns, as the Draw screen makes them. Each keeps the laws of the file: ids and symbols stay
 * unique, the ground stays in the list, no cell is left with a yarn that is gone. What a person can't do is told in a
 * sentence; a yarn that the design does not have is a fault of ours, and throws.
 */

import { good, problem, type Result } from '../result.ts';
import { cutOf } from './bundle-edits.ts';
import { codeOf, type YarnId, yarnIdOf } from './codes.ts';
import type { Design, Layer } from './design.ts';
import type { Edit, Paint } from './edits.ts';
import { limits } from './limits.ts';
import { type Yarn, yarnSchema } from './schema.ts';
import { faultAt, quoted } from './schema-fault.ts';

export type YarnLook = Omit<Yarn, 'id' | 'symbol'>;
export type YarnChange = Partial<Omit<Yarn, 'id'>>;

const nothing: Edit = { kind: 'together', edits: [] };

/**
 * A new yarn at the end of the list, with the lowest free id and the first of `symbols` that no yarn has yet.
 * Problems: `too-many-yarns`, `no-symbol-left`, `bad-yarn`.
 */
export function addYarn(design: Design, symbols: readonly string[], look: YarnLook): Result<Edit> {
  return addYarns(design, symbols, [look]);
}

/** Several new yarns, in one edit: all of them or none. Each as `addYarn` does, and with its problems. */
export function addYarns(
  design: Design,
  symbols: readonly string[],
  looks: readonly YarnLook[],
): Result<Edit> {
  const yarns: Yarn[] = [...design.yarns];
  if (yarns.length + looks.length > limits.yarns) {
    const most = `A design has at most ${limits.yarns} yarns.`;
    return problem(
      'too-many-yarns',
      looks.length === 1
        ? `${most} Merge two of them to make room for another.`
        : `${most} This one has ${yarns.length}, so ${looks.length} more are too many. Add fewer, or merge some first.`,
    );
  }
  for (const look of looks) {
    const symbol = symbols.find((each) => yarns.every((yarn) => yarn.symbol !== each));
    if (symbol === undefined) {
      return problem('no-symbol-left', 'Every symbol is in use. Merge two yarns to set one free.');
    }
    let code = 1;
    while (yarns.some((yarn) => codeOf(yarn.id) === code)) code++;
    yarns.push({ ...look, id: yarnIdOf(code), symbol });
  }
  return withYarns(yarns);
}

/**
 * The yarn taken to another place of the list: the one that it has afterwards, from 0; beyond either end is that end.
 * Cells stay as they are, since they go by id. An edit of no parts where it is there already.
 */
export function moveYarn(design: Design, id: YarnId, to: number): Edit {
  const yarn = yarnOf(design, id);
  const others = design.yarns.filter((each) => each !== yarn);
  const place = Math.max(0, Math.min(others.length, to));
  if (design.yarns[place] === yarn) return nothing;
  return { kind: 'set', field: 'yarns', value: others.toSpliced(place, 0, yarn) };
}

/** The yarn with some of its fields changed. Problems: `symbol-in-use`, `bad-yarn`. */
export function changeYarn(design: Design, id: YarnId, change: YarnChange): Result<Edit> {
  const old = yarnOf(design, id);
  const other = design.yarns.find((yarn) => yarn.id !== id && yarn.symbol === change.symbol);
  if (other) {
    return problem(
      'symbol-in-use',
      `${quoted(other.name)} has the symbol ${other.symbol} already. Choose another symbol.`,
    );
  }
  return withYarns(design.yarns.map((yarn) => (yarn.id === id ? { ...old, ...change } : yarn)));
}

/** The list without the yarn. Problems: `last-yarn`, `ground-yarn`, `yarn-in-use`. */
export function removeYarn(design: Design, id: YarnId): Result<Edit> {
  const { name } = yarnOf(design, id);
  if (design.yarns.length === 1) {
    return problem('last-yarn', `${quoted(name)} is the only yarn. Add another before you remove it.`);
  }
  if (design.ground === id) {
    return problem(
      'ground-yarn',
      `${quoted(name)} is the ground. Choose another yarn as ground before you remove it.`,
    );
  }
  const code = codeOf(id);
  const holder = design.layers.find((layer) => layer.rows.some((row) => row.includes(code)));
  if (holder) {
    return problem(
      'yarn-in-use',
      `Layer ${quoted(holder.name)} still has cells of ${quoted(name)}. Replace them or merge the yarn into another.`,
    );
  }
  return good(listWithout(design, id));
}

/** Every cell of `from` becomes `to`: in all layers, hidden and locked ones too. An edit of no parts where none has any. */
export function replaceYarnEverywhere(design: Design, from: YarnId, to: YarnId): Edit {
  return { kind: 'together', edits: recolourings(design, new Map([[from, to]])) };
}

/**
 * Every cell of a yarn that `mapping` names becomes the yarn it names, all at once, so that two yarns can change places
 * and several can become one: in all layers, hidden and locked ones too. The ground goes along, since it is the yarn
 * of the background. Yarns keep their names, colours and places in the list. An edit of no parts where nothing changes.
 */
export function recolour(design: Design, mapping: ReadonlyMap<YarnId, YarnId>): Edit {
  const edits: Edit[] = recolourings(design, mapping);
  const ground = mapping.get(design.ground) ?? design.ground;
  if (ground !== design.ground) edits.push({ kind: 'set', field: 'ground', value: ground });
  return { kind: 'together', edits };
}

/**
 * `from` replaced by `into` everywhere, as ground too, and taken off the list.
 * Problem: `same-yarn`.
 */
export function mergeYarns(design: Design, from: YarnId, into: YarnId): Result<Edit> {
  const { name } = yarnOf(design, from);
  if (from === into) {
    return problem('same-yarn', `${quoted(name)} can't be merged into itself. Choose another yarn.`);
  }
  const ground: Edit[] = design.ground === from ? [{ kind: 'set', field: 'ground', value: into }] : [];
  const edits = [replaceYarnEverywhere(design, from, into), ...ground, listWithout(design, from)];
  return good({ kind: 'together', edits });
}

/** The edit that sets the list, where each of its yarns is one that the file may hold. */
function withYarns(yarns: readonly Yarn[]): Result<Edit> {
  for (const [i, yarn] of yarns.entries()) {
    const issue = yarnSchema.safeParse(yarn).error?.issues[0];
    if (!issue) continue;
    const fault = faultAt(['yarns', i, ...issue.path], { yarns });
    return problem('bad-yarn', `${fault.charAt(0).toUpperCase()}${fault.slice(1)}.`);
  }
  return good({ kind: 'set', field: 'yarns', value: [...yarns] satisfies Design['yarns'] });
}

/** What is cut of the yarn goes too: a yarn that is added later may get its id. */
function listWithout({ yarns, bundles }: Design, id: YarnId): Edit {
  const edit: Edit = { kind: 'set', field: 'yarns', value: yarns.filter((yarn) => yarn.id !== id) };
  const cut = (bundles?.cut ?? []).filter(({ yarn }) => yarn === id);
  if (cut.length === 0) return edit;
  return { kind: 'together', edits: [edit, ...cut.map((each) => cutOf({ bundles }, each, 0))] };
}

/** One paint for each layer that has cells of a yarn to be replaced by another. */
function recolourings(design: Design, mapping: ReadonlyMap<YarnId, YarnId>): Paint[] {
  const becomes = Uint8Array.from({ length: 256 }, (_, code) => code);
  for (const [from, to] of mapping) {
    yarnOf(design, from);
    yarnOf(design, to);
    becomes[codeOf(from)] = codeOf(to);
  }
  if (becomes.every((code, of) => code === of)) return [];
  return design.layers.map((layer) => recolouring(layer, becomes)).filter((paint) => paint !== null);
}

/** `becomes[code]` is what a cell of that code becomes. */
function recolouring(layer: Layer, becomes: Uint8Array): Paint | null {
  const runs: number[] = [];
  for (const [r, row] of layer.rows.entries()) {
    for (let c = 0; c < row.length; ) {
      const from = c;
      const code = row[c]!;
      do c++;
      while (row[c] === code);
      if (becomes[code] !== code) runs.push(r, from, c - from, becomes[code]!);
    }
  }
  return runs.length === 0 ? null : { kind: 'paint', layer: layer.id, runs: Uint16Array.from(runs) };
}

function yarnOf(design: Design, id: YarnId): Yarn {
  const yarn = design.yarns.find((each) => each.id === id);
  if (!yarn) throw new Error(`the design has no yarn ${id}`);
  return yarn;
}
