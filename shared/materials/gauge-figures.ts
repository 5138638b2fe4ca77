/** The gauge as the materials tell it: its figures, how sure they are, and what they rest on. */
import type { Design } from '../design/design.ts';
import { basisSentence } from '../gauge/basis-sentence.ts';
import type { Basis } from '../gauge/fit-swatches.ts';
import { type Gauge, knotMm } from '../gauge/gauge.ts';
import { type GaugeSpread, spreadOf } from '../gauge/gauge-spread.ts';
import type { GaugeBasis, Materials } from './materials.ts';

export function gaugeFigures(design: Pick<Design, 'cord'>, spread: GaugeSpread): Materials['gauge'] {
  const { gauge, fit } = spread;
  const ground = { diameterMm: fit.thickness.yarnMm };
  const inKnotMm = (at: Gauge) => knotMm(design, ground, at);
  return {
    ...gauge,
    knotsPer10Cm: 100 / gauge.pitchMm,
    rowsPer10Cm: 100 / gauge.rowHeightMm,
    knotMm: inKnotMm(gauge),
    uncertain: {
      pitchMm: spreadOf(spread, ({ pitchMm }) => pitchMm),
      rowHeightMm: spreadOf(spread, ({ rowHeightMm }) => rowHeightMm),
      yarnFactor: spreadOf(spread, ({ yarnFactor }) => yarnFactor),
      knotMm: spreadOf(spread, inKnotMm),
      takeUp: spreadOf(spread, ({ takeUp }) => takeUp),
    },
    basis: {
      size: basisOf(fit.size),
      yarn: basisOf(fit.yarn),
      cord: basisOf(fit.cord),
    },
  };
}

function basisOf(basis: Basis): GaugeBasis {
  return {
    from: basis.from,
    swatches: basis.swatches,
    scatterShare: basis.scatter?.share ?? null,
    scatterFrom: basis.scatter?.from ?? null,
    sentence: basisSentence(basis),
  };
}
