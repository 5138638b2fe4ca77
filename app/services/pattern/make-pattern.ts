/** From a design to the bytes of its pattern: the one way for the command line and both hosts. */
import type { CancelSignal, Progress } from '../../../shared/bridge.ts';
import type { Design } from '../../../shared/design/design.ts';
import { writeDesign } from '../../../shared/design/write-design.ts';
import { type Copy, copyOf } from '../../../shared/pattern/copy.ts';
import { emptyImprint, type Imprint } from '../../../shared/pattern/imprint.ts';
import { layOutPattern } from '../../../shared/pattern/lay-out-pattern.ts';
import { noPages } from '../../../shared/pattern/no-pages.ts';
import type { Paper } from '../../../shared/pattern/page/papers.ts';
import { good, problem, type Result } from '../../../shared/result.ts';
import type { Units } from '../../../shared/units/units.ts';
import { DESIGN_ENDING, stemFor } from '../names/file-name.ts';
import { type AttachedDesign, writePatternPdf } from './draw-pdf.ts';
import { plannedThenDrawn } from './planned-then-drawn.ts';
import { tieCopy } from './tie-copy.ts';

export interface MakePatternOptions {
  readonly paper: Paper;
  readonly units: Units;
  /** The day that the pattern carries. */
  readonly date: Date;
  /** Absent: as the design's own settings say. */
  readonly copy?: Copy;
  /** Absent: nobody is named but the design's designer. */
  readonly imprint?: Imprint;
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

/** Problems: those of the plan, where a piece is too short to tie with; `no-pages`; `cancelled`. */
export async function makePattern(design: Design, options: MakePatternOptions): Promise<Result<MadePattern>> {
  const { paper, units, signal, onProgress } = options;
  const { onPlanned, onDrawn } = plannedThenDrawn(onProgress);
  onPlanned(0);
  const { copy = copyOf(design), imprint = emptyImprint } = options;
  const tied = await tieCopy(design, copy, signal, onPlanned);
  if (!tied) return cancelled();
  if (!tied.ok) return tied;
  const document = layOutPattern({ ...tied.value, paper, units, copy, imprint });
  if (document.pages.length === 0) return noPages;
  const notices = [...document.notices];
  const bytes = await writePatternPdf(document, {
    ...options,
    onProgress: onDrawn,
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
