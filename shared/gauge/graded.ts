/**
 * Grading: the same cells in another cord and another yarn. Everything that follows from the gauge is computed anew:
 * size, lengths, need. The maker's tension is kept: swatches remember what they were tied with, and are changed by what
 * the model says of the two thicknesses (`fit-swatches.ts`) until one is tied with the new cord and yarn.
 */

import type { Design } from '../design/design.ts';
import { apply, type Edit } from '../design/edits.ts';
import { cordSchema, type Swatch, type Yarn, yarnSchema } from '../design/schema.ts';
import { good, problem, type Result } from '../result.ts';

export interface Grade {
  readonly cordDiameterMm: number;
  /** Of the ground; other yarns become thicker or thinner in the same proportion. */
  readonly yarnDiameterMm: number;
}

/**
 * The mass of a metre grows with the square of the thickness, as for the same fibre spun alike. What was told of the old
 * cord and yarn only is dropped: prices, and what is owned.
 * Problem: `out-of-range` where a cord or yarn would leave what a design may hold.
 */
export function gradeEdit(design: Design, grade: Grade): Result<Edit> {
  const ground = design.yarns.find(({ id }) => id === design.ground);
  if (!ground) throw new Error(`the design has no yarn ${design.ground}, its ground`);
  const cord = gradedCord(design.cord, grade.cordDiameterMm);
  const times = grade.yarnDiameterMm / ground.diameterMm;
  const yarns = design.yarns.map((yarn) =>
    yarn === ground ? gradedYarn(yarn, grade.yarnDiameterMm) : gradedYarn(yarn, yarn.diameterMm * times),
  );
  if (!cordSchema.safeParse(cord).success || !yarns.every((yarn) => yarnSchema.safeParse(yarn).success)) {
    return problem(
      'out-of-range',
      'No design can hold a cord or yarn of this thickness. Choose one nearer to what it has.',
    );
  }
  const swatches = design.swatches.map((swatch) =>
    remembering(swatch, design.cord.diameterMm, ground.diameterMm),
  );
  const edits: Edit[] = [
    { kind: 'set', field: 'cord', value: cord },
    { kind: 'set', field: 'yarns', value: yarns },
    { kind: 'set', field: 'swatches', value: swatches },
  ];
  if (design.money && cord !== design.cord) {
    const { cordPricePerM: _, ...money } = design.money;
    edits.push({ kind: 'set', field: 'money', value: money });
  }
  return good({ kind: 'together', edits });
}

/** The graded design itself; problems as `gradeEdit`. */
export function graded(design: Design, grade: Grade): Result<Design> {
  const edit = gradeEdit(design, grade);
  return edit.ok ? good(apply(design, edit.value)) : edit;
}

function gradedCord(cord: Design['cord'], diameterMm: number): Design['cord'] {
  if (diameterMm === cord.diameterMm) return cord;
  return { ...cord, diameterMm, gPerM: cord.gPerM * (diameterMm / cord.diameterMm) ** 2 };
}

function gradedYarn(yarn: Yarn, diameterMm: number): Yarn {
  if (diameterMm === yarn.diameterMm) return yarn;
  const { price: _price, ownedSkeins: _ownedSkeins, ...rest } = yarn;
  return { ...rest, diameterMm, metresPer100G: yarn.metresPer100G * (yarn.diameterMm / diameterMm) ** 2 };
}

function remembering(swatch: Swatch, cordDiameterMm: number, yarnDiameterMm: number): Swatch {
  return { cordDiameterMm, yarnDiameterMm, ...swatch };
}
