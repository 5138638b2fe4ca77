/**
 * Editions: what a published pattern was made of is kept in the design, chart, plan, texts and all, so that the same pattern can be
 * printed again years later, and what changed since can be told. How a copy is printed and for whom is chosen for each copy; the
 * imprint is that of today, so that a buyer can write to an address where somebody is.
 */
import type { Chart } from '../../chart/chart.ts';
import { flatten } from '../../chart/chart.ts';
import { chartHash, chartJson } from '../../chart/chart-json.ts';
import type { Design } from '../../design/design.ts';
import type { SetField } from '../../design/edits.ts';
import { limits } from '../../design/limits.ts';
import { codesAllowed, readRow, writeRow } from '../../design/row-text.ts';
import type { Edition, PatternSettings } from '../../design/schema.ts';
import { good, problem, type Result } from '../../result.ts';
import { keepPlan, planKept } from '../../tying/kept/kept-plan.ts';
import type { Plan } from '../../tying/plan.ts';
import { publishedPlan } from '../../tying/planners/assemble-plan.ts';
import { type Change, changesSince } from './changes-since.ts';
import { patternKept, withCover, withCoverOf } from './kept-cover.ts';

export type EditionEdit = Extract<SetField, { field: 'editions' }>;

export interface NewEdition {
  /** The day, as ISO 8601 writes it. */
  readonly date: string;
  readonly note: string;
}

/**
 * The edit that publishes the design as it is, planned by `plan`, as the next edition. `chart` is the design's own. Problem:
 * `too-many` and `too-large` where no further edition can be kept.
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
  const made = withCoverOf(before, madeOf(design, chart, plan));
  const edition: Edition = { number, date, note, errata: [], made };
  const value = [...before, edition];
  if (JSON.stringify(value).length > limits.editionsChars) {
    return problem(
      'too-large',
      'The editions of this pattern are too large to be kept together. Go on with a copy of the design, and begin with edition 1 there.',
    );
  }
  return good({ kind: 'set', field: 'editions', value });
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

/** Problems: `not-there`; those of `editionAgain`. */
export function designOfEdition(design: Design, number: number): Result<Design> {
  const edition = design.editions?.find((each) => each.number === number);
  if (!edition) return problem('not-there', `There is no edition ${number} of this pattern.`);
  const again = editionAgain(design, edition);
  return again.ok ? good(again.value.design) : again;
}

/** An edition as it was published, to be printed again. */
export interface EditionAgain {
  /**
   * The design as it was then: this edition is its latest, and is in force. What an edition does not keep, because it is not
   * printed in a pattern, or because it was published before that was kept, is as it is now.
   */
  readonly design: Design;
  readonly chart: Chart;
  readonly plan: Plan;
}

/** `edition` is one of the design's. Problems: `damaged` where the chart or cover that is kept can't be read; `not-this-plan`. */
export function editionAgain(design: Design, edition: Edition): Result<EditionAgain> {
  const { number, made } = edition;
  const { chart: rowTexts, plan: kept, pattern: _kept, fitted, rates, ...fields } = made;
  const damaged = (what: string) =>
    problem(
      'damaged',
      `Edition ${number} can’t be printed again: ${what}. Take an older copy of the design.`,
    );
  const allowed = codesAllowed(made.yarns);
  const rows: Uint8Array[] = [];
  for (const text of rowTexts) {
    const row = readRow(text, made.columns, allowed);
    if (typeof row === 'string') return damaged(`row ${rows.length + 1} of its chart ${row}`);
    rows.push(row);
  }
  const pattern = patternKept(design.editions ?? [], made);
  if (pattern === 'lost') return damaged('the photograph of its cover is lost');
  const layer = { id: 'picture', name: 'Picture', visible: true, locked: false, rows };
  const { pins: _, ...now } = design;
  const then: Design = {
    ...now,
    ...fields,
    rows: rows.length,
    layers: [layer],
    reference: null,
    ...(rates && { rates }),
    ...(fitted !== undefined && { bundles: { ...design.bundles, fitted } }),
    ...(pattern && { pattern: { ...pattern, ...labelsOf(design) } }),
    editions: (design.editions ?? []).filter((each) => each.number <= number),
  };
  const chart = flatten(then);
  const plan = planKept(kept, made.tying, chart);
  if (!plan.ok) return plan;
  return good({ design: then, chart, plan: publishedPlan(plan.value, chartHash(chartJson(then, chart))) });
}

/** Of the finished hanging, and no part of a pattern. */
function labelsOf({ pattern }: Design): Pick<PatternSettings, 'labels'> {
  return pattern?.labels ? { labels: pattern.labels } : {};
}

/**
 * The latest edition, where the design is still what it was made of but for how copies are usually printed; null where the design
 * has gone on since. `chart` is the design's own.
 */
export function latestInForce(design: Design, chart: Chart): Edition | null {
  const edition = design.editions?.at(-1);
  if (!edition) return null;
  const changes = changesSinceLast(design, chart);
  return changes.every(({ kind }) => kind === 'copy') ? edition : null;
}

/** The latest edition, see `latestInForce`, with the plan that it was published with. */
export function editionInForce(
  design: Design,
  chart: Chart,
): { readonly edition: Edition; readonly plan: Plan } | null {
  const edition = latestInForce(design, chart);
  if (!edition) return null;
  const again = editionAgain(design, edition);
  return again.ok ? { edition, plan: again.value.plan } : null;
}

/**
 * What has changed since the latest edition; nothing where there is none. The plan follows from the rest, unless the planner has
 * learnt something: it is compared where `plan` is given.
 */
export function changesSinceLast(design: Design, chart: Chart, plan?: Plan): Change[] {
  const editions = design.editions ?? [];
  const last = editions.at(-1);
  if (!last) return [];
  const now = fieldsOf(design, chart);
  return changesSince(
    withCover(editions, last.made),
    plan ? { ...now, plan: keepPlan(plan, chart) } : { ...now, plan: last.made.plan },
  );
}

/** What the pattern is made of now, as an edition keeps it. */
export function madeOf(design: Design, chart: Chart, plan: Plan): Edition['made'] {
  return { ...fieldsOf(design, chart), plan: keepPlan(plan, chart) };
}

/** All but the plan. */
function fieldsOf(design: Design, chart: Chart): Omit<Edition['made'], 'plan'> {
  const { title, designer, startCorner, columns, cord, dowel, fringe, swatches } = design;
  const { tying, yarnMargin, ground, yarns, rates } = design;
  const { labels: _, ...pattern } = design.pattern ?? {};
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
    rates,
    fitted: design.bundles?.fitted === true,
    pattern,
    chart: Array.from({ length: chart.rows }, (_, row) =>
      writeRow(chart.cells.subarray(row * columns, (row + 1) * columns)),
    ),
  };
}
