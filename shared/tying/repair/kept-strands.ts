/**
 * A quick planner that remembers: asked about a chart that differs a little from the one before, it repairs what it
 * knows instead of beginning anew, and gives the very same strands as the quick plan (`plan-quickly.ts`). For live
 * figures while someone draws. A cell on a chart of 200 x 300 takes a few milliseconds.
 */
import type { Chart } from '../../chart/chart.ts';
import { samePins } from '../../design/same-pins.ts';
import { searchTable } from '../cover/augment.ts';
import type { Cover } from '../cover/cover.ts';
import { pathCover } from '../cover/path-cover.ts';
import { SpareArrays } from '../cover/spare-arrays.ts';
import { type WeighedLinks, weighLinks } from '../cover/weighed-links.ts';
import { choiceOf } from '../improve/choice-of.ts';
import { bestPieces, type PiecedStrands } from '../pieces/best-pieces.ts';
import type { OpenPieces } from '../pieces/open-pieces.ts';
import { Links } from '../question/links.ts';
import type { PlanQuestion, StrandChoice } from '../question/strand-choice.ts';
import { type Runs, runsOf } from '../runs.ts';
import { KeptRuns } from './kept-runs.ts';
import { repairCover } from './repair-cover.ts';
import { repairPieces } from './repair-pieces.ts';
import { repairRuns } from './repair-runs.ts';

interface Known {
  readonly question: PlanQuestion;
  readonly cover: Cover;
  readonly pieces: Pick<PiecedStrands, 'previous' | 'roomBefore'>;
}

export class KeptStrands {
  #known: Known | null = null;
  readonly #spare = new SpareArrays();
  #table = searchTable(0);
  readonly #desk: OpenPieces[] = [];

  /** The runs of a chart, for the question about it. */
  runsOf(chart: Chart): Runs {
    const known = this.#known?.question;
    return known ? repairRuns(known.chart, known.runs, chart) : runsOf(chart);
  }

  /** As any planner. */
  choose(question: PlanQuestion): StrandChoice {
    const known = this.#known;
    const links = weighLinks(question, new Links(question));
    const kept =
      known && isNear(known.question, question) ? new KeptRuns(known.question, question, this.#spare) : null;
    // Until it is known anew nothing is: what was known is taken apart.
    this.#known = null;
    const chosen =
      known && kept && kept.changes < question.runs.count * mostChanged
        ? this.#repaired(known, question, kept, links)
        : anew(question, links);
    this.#known = chosen;
    const { previous, joins } = choiceOf(question, chosen.pieces);
    return { previous: previous.slice(), joins };
  }

  #repaired(known: Known, question: PlanQuestion, kept: KeptRuns, links: WeighedLinks): Known {
    const { count } = question.runs;
    if (this.#table.seen.length < count) this.#table = searchTable(count + 1000);
    const desk = { spare: this.#spare, table: this.#table };
    const cover = repairCover(known.cover, kept, links, desk, question.pinned);
    const pieces = repairPieces(question, kept, known.pieces, cover, this.#desk);
    const { previous, next, weight, price } = known.cover;
    this.#spare.takeBack(previous, next, weight, price, known.pieces.previous, known.pieces.roomBefore);
    return { question, cover, pieces };
  }
}

/** Where more of the runs have changed than this share, planning anew is as quick. */
const mostChanged = 0.1;

/** True where the questions differ in nothing but cells. */
function isNear(old: PlanQuestion, now: PlanQuestion): boolean {
  if (old.tied || now.tied) return false;
  if (!samePins(old.pinned?.obeyed ?? [], now.pinned?.obeyed ?? [])) return false;
  if (old.chart.columns !== now.chart.columns || old.chart.rows !== now.chart.rows) return false;
  if (old.chart.startCorner !== now.chart.startCorner) return false;
  const { knotMm: oldKnots, ...oldRest } = old.settings;
  const { knotMm: knots, ...rest } = now.settings;
  const settings = Object.keys(rest) as (keyof typeof rest)[];
  if (settings.some((each) => rest[each] !== oldRest[each])) return false;
  // A yarn may have come or gone, but not become thicker.
  const both = Object.keys(knots).filter((id) => id in oldKnots) as (keyof typeof knots)[];
  return both.every((id) => knots[id] === oldKnots[id]);
}

function anew(question: PlanQuestion, links: WeighedLinks): Known {
  const cover = pathCover(question, links);
  return { question, cover, pieces: bestPieces(question, cover.previous) };
}
