/** What a plan is made with: the maker's settings and the gauge, to the precision that the plan is published in. */
import { codeOf, yarnIdOf } from '../design/codes.ts';
import type { Design } from '../design/design.ts';
import type { TyingSettings } from '../design/schema.ts';
import { type Gauge, knotMm } from '../gauge/gauge.ts';
import type { PlanSettings } from './plan.ts';
import type { Runs } from './runs.ts';
import { fromTenths, toTenths } from './tenths.ts';

/**
 * `knotMm` names only yarns that tie a knot, so a plan never changes with a yarn that it does not use. A knot takes
 * at least a tenth of a mm.
 */
export function planSettings(
  design: Pick<Design, 'cord' | 'yarns' | 'tying'>,
  runs: Runs,
  gauge: Gauge,
): PlanSettings {
  const { tying } = design;
  const tied = codesOf(runs);
  const knots: PlanSettings['knotMm'] = {};
  for (const yarn of design.yarns) {
    if (tied.has(codeOf(yarn.id))) knots[yarn.id] = Math.max(0.1, tenth(knotMm(design, yarn, gauge)));
  }
  for (const code of tied) {
    if (!(yarnIdOf(code) in knots)) throw new Error(`the chart has a yarn ${code} that the design has not`);
  }
  return settingsWith(tying, {
    pitchMm: tenThousandth(gauge.pitchMm),
    rowHeightMm: tenThousandth(gauge.rowHeightMm),
    knotMm: knots,
  });
}

/** The maker's settings beside the measures of a gauge, which come as they are. */
export function settingsWith(
  tying: TyingSettings,
  gauge: Pick<PlanSettings, 'pitchMm' | 'rowHeightMm' | 'knotMm'>,
): PlanSettings {
  return {
    ...gauge,
    slack: tying.slack,
    workingLengthMm: tenth(tying.workingLengthMm),
    tailMm: tenth(tying.tailMm),
    effortMm: tenth(tying.effortMm),
    carryMaxCords: tying.carryMaxCords,
    carryMaxRows: tying.carryMaxRows,
    rowPriceMm: tenth(tying.rowPriceMm),
    // The key is always there, so that whoever compares settings key by key sees a reserve come and go.
    reserveShare: tying.reserveShare === 0 ? undefined : tying.reserveShare,
  };
}

/** The codes of the yarns that are tied, each once. */
function codesOf({ yarn }: Runs): Set<number> {
  const codes = new Set<number>();
  // Neighbours differ, yet asking the set a quarter of a million times takes longer than looking at a few bytes.
  const seen = new Uint8Array(256);
  for (const code of yarn) seen[code] = 1;
  seen.forEach((is, code) => {
    if (is === 1) codes.add(code);
  });
  return codes;
}

function tenth(mm: number): number {
  return fromTenths(toTenths(mm));
}

/** Pitch and row height are multiplied before they are rounded to tenths, so they keep more. */
function tenThousandth(mm: number): number {
  return Math.round(mm * 10_000) / 10_000;
}
