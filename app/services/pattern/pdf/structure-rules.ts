/**
 * The rules of PDF/UA (ISO 14289-1) that pages could break, watched while they are written: headings begin at level 1 and skip
 * none (7.4.2), all rows of a table are equally long (7.5, and ISO 32000-1, table 337), and what stands in tables and lists is
 * what may stand there. A file that breaks one does not say that it follows the standard.
 */
export interface StructureRules {
  /** `element` becomes the last child of `parent`. */
  enter(element: object, tag: string, parent: object): void;
  kept(): boolean;
}

/** Where elements of these kinds may stand. */
const parentsOf: Readonly<Record<string, readonly string[]>> = {
  TR: ['Table'],
  TH: ['TR'],
  TD: ['TR'],
  LI: ['L'],
  Lbl: ['LI'],
  LBody: ['LI'],
};

/** What may stand in elements of these kinds. */
const childrenOf: Readonly<Record<string, readonly string[]>> = {
  Table: ['TR'],
  TR: ['TH', 'TD'],
  L: ['LI'],
  LI: ['Lbl', 'LBody'],
};

export function newRules(): StructureRules {
  const tags = new Map<object, string>();
  /** Of each table, its rows; of each row, the number of its cells. */
  const rows = new Map<object, object[]>();
  const cells = new Map<object, number>();
  let level = 0;
  let broken = false;
  return {
    enter(element, tag, parent) {
      tags.set(element, tag);
      const parentTag = tags.get(parent) ?? '';
      if (!(parentsOf[tag]?.includes(parentTag) ?? true)) broken = true;
      if (!(childrenOf[parentTag]?.includes(tag) ?? true)) broken = true;
      if (tag === 'TR') {
        const before = rows.get(parent);
        if (before) before.push(element);
        else rows.set(parent, [element]);
      }
      if (parentTag === 'TR') cells.set(parent, (cells.get(parent) ?? 0) + 1);
      const heading = /^H(\d)$/.exec(tag);
      if (!heading) return;
      if (Number(heading[1]) > level + 1) broken = true;
      level = Number(heading[1]);
    },
    kept() {
      const isEven = [...rows.values()].every(
        (each) => new Set(each.map((row) => cells.get(row) ?? 0)).size === 1,
      );
      return !broken && isEven;
    },
  };
}
