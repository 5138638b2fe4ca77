/**
 * A plan that is settled: labels were printed for it, so pieces are cut by it. The same design gives the same plan as long as the
 * planner is the same one; a settled plan stays in use when the planner has learnt something, and gives way as soon as chart,
 * settings, gauge or pins are others than they were then.
 */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import type { Chart } from '../../chart/chart.ts';
import { chartHash, chartJson } from '../../chart/chart-json.ts';
import { codeOf, type YarnId } from '../../design/codes.ts';
import type { Design } from '../../design/design.ts';
import type { SettledPlan } from '../../design/schema.ts';
import type { Plan } from '../plan.ts';
import { publishedPlan } from '../planners/assemble-plan.ts';
import { wishedQuestion } from '../question/wished-question.ts';
import { keepPlan, planKept } from './kept-plan.ts';

/** `plan` is the full plan of the design, and `chart` the design's own; null where it can't be planned. */
export function settlePlan(design: Design, chart: Chart, plan: Plan): SettledPlan | null {
  const of = madeFrom(design, chart);
  return of === null ? null : { ...keepPlan(plan, chart), of };
}

/** The settled plan, where the design has one that is still its own. */
export function settledPlan(design: Design, chart: Chart): Plan | null {
  const settled = design.bundles?.plan;
  if (!settled || settled.of !== madeFrom(design, chart)) return null;
  const plan = planKept(settled, design.tying, chart);
  return plan.ok ? publishedPlan(plan.value, chartHash(chartJson(design, chart))) : null;
}

/** SHA-256, in hex, of all that a plan hangs on; names and colours of yarns are not among it. */
function madeFrom(design: Design, chart: Chart): string | null {
  const asked = wishedQuestion(design, chart);
  if (!asked.ok) return null;
  const { settings, runs } = asked.value.question;
  const { knotMm, ...others } = settings;
  const tied = new Set(runs.yarn);
  const { columns, rows, startCorner, cells } = chart;
  const told = {
    ...{ columns, rows, startCorner, ...others },
    knotMm: Object.fromEntries(Object.entries(knotMm).filter(([yarn]) => tied.has(codeOf(yarn as YarnId)))),
    liveWish: design.tying.liveWish,
    pins: design.pins ?? [],
  };
  const digest = sha256.create();
  digest.update(utf8ToBytes(JSON.stringify(told, inOrder)));
  digest.update(cells);
  return bytesToHex(digest.digest());
}

/** Keys in the order of the alphabet: the same figures are the same text, however they came together. */
function inOrder(_key: string, value: unknown): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1)));
}
