/**
 * Editions: what a published pattern was made of is kept in the design, chart and plan and all, so that the same pattern can be
 * printed again years later, and what changed since can be told.
 */
import type { Chart } from '../../chart/chart.ts';
import { flatten } from '../../chart/chart.ts';
import { chartHash, chartJson } from '../../chart/chart-json.ts';
import type { Design } from '../../design/design.ts';
import type { SetField } from '../../design/edits.ts';
import { limits } from '../../design/limits.ts';
import { codesAllowed, readRow, writeRow } from '../../design/row-text.ts';
import type { Edition } from '../../design/schema.ts';
import { good, problem, type Result } from '../../result.ts';
import { publishedPlan } from '../../tying/assemble-plan.ts';
import { keepPlan, planKept } from '../../tying/kept-plan.ts';
import type { Plan } from '../../tying/plan.ts';
import { changesSince } from './changes-since.ts';

export type EditionEdit = Extract<SetField, { field: 'editions' }>;

export interface NewEdition {
  /** The day, as ISO 8601 writes it. */
  readonly date: string;
  readonly note: string;
}

/**
 * The edit that publishes the design as it is, planned by `plan`, as the next edition. `chart` is the design's own. Problem:
 * `too-many` where no further edition can be kept.
 */
export function publishEdition(
  design: Design,
  chart: Chart,
  plan: Plan,
  { date, note }: NewEdition,
): Result<EditionEdit> {
  const before = design.editions ?? [];
  if (before.length >= limits.editions) {
    return problem(
      'too-many',
      `A design keeps ${limits.editions} editions. Go on with a copy of the design, and begin with edition 1 there.`,
    );
  }
  const number = 1 + Math.max(0, ...before.map((each) => each.number));
  const edition: Edition = { number, date, note, errata: [], made: madeOf(design, chart, plan) };
  return good({ kind: 'set', field: 'editions', value: [...before, edition] });
}

/** The edit that adds an erratum to an edition. Problems: `not-there`; `too-many`. */
export function addErratum(
  { editions = [] }: Pick<Design, 'editions'>,
  number: number,
  erratum: { readonly date: string; readonly text: string },
): Result<EditionEdit> {
  const edition = editions.find((each) => each.number === number);
  if (!edition) return problem('not-there', `There is no edition ${number} of this pattern.`);
  if (edition.errata.length >= limits.errata) {
    return problem(
      'too-many',
      `Edition ${number} has ${limits.errata} errata already. Publish the next edition.`,
    );
  }
  const next = { ...edition, errata: [...edition.errata, erratum] };
  return good({
    kind: 'set',
    field: 'editions',
    value: editions.map((each) => (each === edition ? next : each)),
  });
}

/** An edition as it was published, to be printed again. */
export interface EditionAgain {
  /** The design as it was then; its texts, parts and how it is printed are those of now. */
  readonly design: Design;
  readonly chart: Chart;
  readonly plan: Plan;
}

/** Problems: `damaged` where the chart that is kept can't be read; `not-this-plan`. */
export function editionAgain(design: Design, { made, number }: Edition): Result<EditionAgain> {
  const { chart: rowTexts, plan: kept, ...fields } = made;
  const allowed = codesAllowed(made.yarns);
  const rows: Uint8Array[] = [];
  for (const text of rowTexts) {
    const row = readRow(text, made.columns, allowed);
    if (typeof row === 'string') {
      return problem(
        'damaged',
        `Edition ${number} can’t be printed again: row ${rows.length + 1} of its chart ${row}. Take an older copy of the design.`,
      );
    }
    rows.push(row);
  }
  const layer = { id: 'picture', name: 'Picture', visible: true, locked: false, rows };
  const { pins: _, ...now } = design;
  const then: Design = { ...now, ...fields, rows: rows.length, layers: [layer], reference: null };
  const chart = flatten(then);
  const plan = planKept(kept, made.tying, chart);
  if (!plan.ok) return plan;
  return good({ design: then, chart, plan: publishedPlan(plan.value, chartHash(chartJson(then, chart))) });
}

/**
 * The latest edition, where the design is still what it was made of, with the plan that it was published with; null where the
 * design has gone on since. `chart` is the design's own.
 */
export function editionInForce(
  design: Design,
  chart: Chart,
): { readonly edition: Edition; readonly plan: Plan } | null {
  const edition = design.editions?.at(-1);
  if (!edition) return null;
  const now = { ...fieldsOf(design, chart), plan: edition.made.plan };
  if (changesSince(edition.made, now).length > 0) return null;
  const again = editionAgain(design, edition);
  return again.ok ? { edition, plan: again.value.plan } : null;
}

/** What the pattern is made of now, as an edition keeps it. */
export function madeOf(design: Design, chart: Chart, plan: Plan): Edition['made'] {
  return { ...fieldsOf(design, chart), plan: keepPlan(plan, chart) };
}

/** What an edition keeps of a design and its chart, but for the plan. */
export function fieldsOf(design: Design, chart: Chart): Omit<Edition['made'], 'plan'> {
  const { title, designer, startCorner, columns, cord, dowel, fringe, swatches } = design;
  const { tying, yarnMargin, ground, yarns } = design;
  return {
    title,
    designer,
    startCorner,
    columns,
    cord,
    dowel,
    fringe,
    swatches,
    tying,
    yarnMargin,
    ground,
    yarns,
    chart: Array.from({ length: chart.rows }, (_, row) =>
      writeRow(chart.cells.subarray(row * columns, (row + 1) * columns)),
    ),
  };
}
