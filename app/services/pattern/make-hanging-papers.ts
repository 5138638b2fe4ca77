/** From a design to the bytes of the papers that go with the finished hanging: the one way for the command line and both hosts. */
import type { Design } from '../../../shared/design/design.ts';
import { copyOf } from '../../../shared/pattern/copy.ts';
import type { HangingPaper } from '../../../shared/pattern/hanging-papers/hanging-papers.ts';
import { layOutHangingPapers } from '../../../shared/pattern/hanging-papers/lay-out-hanging-papers.ts';
import { emptyImprint } from '../../../shared/pattern/imprint.ts';
import { good, problem, type Result } from '../../../shared/result.ts';
import { writePatternPdf } from './draw-pdf.ts';
import type { MadePattern, MakePatternOptions } from './make-pattern.ts';
import { plannedThenDrawn } from './planned-then-drawn.ts';
import { tieCopy } from './tie-copy.ts';

export interface MakeHangingPapersOptions extends Omit<MakePatternOptions, 'attachDesign'> {
  /** At least one. */
  readonly which: readonly HangingPaper[];
}

/** Problems: those of the plan; `nothing-to-print` where none of them has a page; `cancelled`. */
export async function makeHangingPapers(
  design: Design,
  options: MakeHangingPapersOptions,
): Promise<Result<MadePattern>> {
  const { paper, units, which, signal, onProgress } = options;
  const { onPlanned, onDrawn } = plannedThenDrawn(onProgress);
  onPlanned(0);
  const { copy = copyOf(design), imprint = emptyImprint } = options;
  const tied = await tieCopy(design, copy, signal, onPlanned);
  if (!tied) return cancelled();
  if (!tied.ok) return tied;
  const document = layOutHangingPapers({ ...tied.value, paper, units, copy, imprint }, which);
  if (document.pages.length === 0) {
    return problem(
      'nothing-to-print',
      document.notices.at(-1) ?? 'The picture is too small for a backing, so there is no template to print.',
    );
  }
  const notices = [...document.notices];
  const bytes = await writePatternPdf(document, {
    ...options,
    onProgress: onDrawn,
    onNotice: (notice) => notices.push(notice),
  });
  if (!bytes) return cancelled();
  return good({ bytes, pages: document.pages.length, notices });
}

function cancelled(): ReturnType<typeof problem> {
  return problem('cancelled', 'No papers were made, because it was cancelled. Nothing was written.');
}
