/**
 * A plan kept as text, a line for each row of the chart, so that it can be printed again exactly even after the planner has learnt
 * something. Each run of the row, in tying order, is one word: `-` where a strand begins with it, else how many runs back, in
 * tying order, its strand has tied before. `+5` behind it: after five knots of the run a fresh piece begins.
 */
import type { Chart } from '../../chart/chart.ts';
import { codeOf, type YarnId } from '../../design/codes.ts';
import type { KeptPlan, TyingSettings } from '../../design/schema.ts';
import { good, problem, type Result } from '../../result.ts';
import { checkTying } from '../check-tying.ts';
import type { PlainPlan, Plan, PlanSettings } from '../plan.ts';
import { settingsWith } from '../plan-settings.ts';
import { assemblePlan } from '../planners/assemble-plan.ts';
import type { PlanQuestion, StrandChoice } from '../question/strand-choice.ts';
import { knotsOf, type Runs, runsOf } from '../runs.ts';
import { tenthsOf } from '../tenths.ts';
import { tiedRows } from './tied-rows.ts';

/** `chart` is the one that was planned. */
export function keepPlan(plan: Plan, chart: Chart): KeptPlan {
  const { pitchMm, rowHeightMm, knotMm } = plan.settings;
  const question = questionOf(chart, plan.settings);
  const tied = tiedRows({ plan, rows: chart.rows }, question);
  if (!tied.ok) throw new Error(`the plan is not the chart's: ${tied.problem.sentence}`);
  return {
    pitchMm,
    rowHeightMm,
    knots: (Object.entries(knotMm) as [YarnId, number][]).map(([yarn, mm]) => ({ yarn, knotMm: mm })),
    rows: rowsOf(question.runs, tied.value.choice, chart.rows),
  };
}

/**
 * The plan that was kept, with figures to the last tenth of a mm. `tying` are the settings that it was made with. Problem:
 * `not-this-plan` where it does not belong to the chart, or where a piece is too short.
 */
export function planKept(kept: KeptPlan, tying: TyingSettings, chart: Chart): Result<PlainPlan> {
  const settings = settingsOf(kept, tying);
  const question = questionOf(chart, settings);
  const longest = Math.max(0, ...kept.knots.map(({ knotMm }) => knotMm));
  const choice = choiceIn(kept, question.runs, chart.rows);
  const known = new Set(kept.knots.map(({ yarn }) => codeOf(yarn)));
  if (!choice || !checkTying(settings, longest).ok || question.runs.yarn.some((yarn) => !known.has(yarn)))
    return problem(
      'not-this-plan',
      'The plan that is kept with this edition does not fit its chart. Plan it anew, or take an older copy of the design.',
    );
  return good(assemblePlan(question, choice));
}

function questionOf(chart: Chart, settings: PlanSettings): PlanQuestion {
  return { chart, runs: runsOf(chart), settings, tenths: tenthsOf(settings) };
}

function settingsOf({ pitchMm, rowHeightMm, knots }: KeptPlan, tying: TyingSettings): PlanSettings {
  const knotMm = Object.fromEntries(knots.map(({ yarn, knotMm }) => [yarn, knotMm]));
  const settings = settingsWith(tying, { pitchMm, rowHeightMm, knotMm });
  return tying.liveWish === undefined ? settings : { ...settings, liveWish: tying.liveWish };
}

function rowsOf(runs: Runs, { previous, joins }: StrandChoice, rows: number): string[] {
  const words: string[][] = Array.from({ length: rows }, () => []);
  let at = 0;
  for (let run = 0; run < runs.count; run++) {
    let word = previous[run] === -1 ? '-' : String(run - previous[run]!);
    for (; joins[at] === run; at += 2) word += `+${joins[at + 1]}`;
    words[runs.row[run]!]!.push(word);
  }
  return words.map((row) => row.join(' '));
}

const wordForm = /^(?:-|[1-9][0-9]{0,6})(?:\+[1-9][0-9]{0,6})*$/;

/** Null where the words are not those of these runs. */
function choiceIn({ rows }: KeptPlan, runs: Runs, count: number): StrandChoice | null {
  if (rows.length !== count) return null;
  const previous = new Int32Array(runs.count).fill(-1);
  const joins: number[] = [];
  const goesOn = new Set<number>();
  let run = 0;
  for (const [row, text] of rows.entries()) {
    for (const word of text === '' ? [] : text.split(' ')) {
      if (run >= runs.count || runs.row[run] !== row || !wordForm.test(word)) return null;
      const [back, ...cuts] = word.split('+');
      if (back !== '-') {
        const before = run - Number(back);
        // A strand is of one yarn, and goes on once.
        if (before < 0 || goesOn.has(before) || runs.yarn[before] !== runs.yarn[run]) return null;
        goesOn.add(before);
        previous[run] = before;
      }
      let tied = 0;
      for (const cut of cuts.map(Number)) {
        if (cut <= tied || cut >= knotsOf(runs, run)) return null;
        joins.push(run, cut);
        tied = cut;
      }
      run++;
    }
  }
  return run === runs.count ? { previous, joins } : null;
}
