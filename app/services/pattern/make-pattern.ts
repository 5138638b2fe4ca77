/** From a design to the bytes of its pattern: the one way for the command line and both hosts. */
import type { CancelSignal, Progress } from '../../../shared/bridge.ts';
import { flatten } from '../../../shared/chart/chart.ts';
import type { Design } from '../../../shared/design/design.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { materialsOf } from '../../../shared/materials/tally.ts';
import { layOutPattern } from '../../../shared/pattern/lay-out-pattern.ts';
import type { Paper } from '../../../shared/pattern/papers.ts';
import { good, problem, type Result } from '../../../shared/result.ts';
import type { Units } from '../../../shared/units/units.ts';
import { DESIGN_ENDING, stemFor } from '../names/file-name.ts';
import { type AttachedDesign, writePatternPdf } from './draw-pdf.ts';
import { planWithPauses } from './plan-with-pauses.ts';

export interface MakePatternOptions {
  readonly paper: Paper;
  readonly units: Units;
  /** The day that the pattern carries. */
  readonly date: Date;
  /** Puts the design into the file, so that it can be opened from it. For the maker; a buyer gets none. */
  readonly attachDesign?: boolean;
  readonly signal?: CancelSignal;
  readonly onProgress?: (progress: Progress) => void;
}

export interface MadePattern {
  readonly bytes: Uint8Array;
  readonly pages: number;
  /** What would disappoint a reader, a sentence each. */
  readonly notices: readonly string[];
}

/** Problems: those of the plan, where a piece is too short to tie with; `cancelled`. */
export async function makePattern(design: Design, options: MakePatternOptions): Promise<Result<MadePattern>> {
  const { paper, units, signal, onProgress } = options;
  onProgress?.({ done: 0, what: 'Planning the strands' });
  const chart = flatten(design);
  const plan = await planWithPauses(design, chart, signal);
  if (!plan) return cancelled();
  if (!plan.ok) return plan;
  const materials = materialsOf(design, chart, plan.value);
  const document = layOutPattern({ design, chart, plan: plan.value, materials, paper, units });
  const notices = [...document.notices];
  const bytes = await writePatternPdf(document, {
    ...options,
    ...(options.attachDesign && { attached: designFile(design) }),
    onNotice: (notice) => notices.push(notice),
  });
  if (!bytes) return cancelled();
  return good({ bytes, pages: document.pages.length, notices });
}

/** As it would be saved, under its title. */
function designFile(design: Design): AttachedDesign {
  return {
    fileName: `${stemFor(design.title)}${DESIGN_ENDING}`,
    bytes: new TextEncoder().encode(writeDesign(design)),
  };
}

function cancelled(): ReturnType<typeof problem> {
  return problem('cancelled', 'The pattern was not made, because it was cancelled. Nothing was written.');
}
