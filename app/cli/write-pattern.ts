/** A design's pattern and the picture of its chart, beside one another. */
import type { Design } from '../../shared/design/design.ts';
import type { Copy } from '../../shared/pattern/copy.ts';
import type { Imprint } from '../../shared/pattern/imprint.ts';
import { type Paper, papers } from '../../shared/pattern/page/papers.ts';
import type { Result } from '../../shared/result.ts';
import { counted } from '../../shared/units/counted.ts';
import type { Units } from '../../shared/units/units.ts';
import { makeChartPng } from '../services/pattern/draw-png.ts';
import { makePattern } from '../services/pattern/make-pattern.ts';
import type { Terminal } from './cli-verb.ts';
import { writeOutput } from './write-output.ts';

export interface PatternPlace {
  readonly paper: Paper;
  /** Absent: both kinds. */
  readonly units?: Units;
  /** Path without ending: ' A4.pdf' and ' chart.png' are added. */
  readonly place: string;
  /** Absent: as the design says. */
  readonly copy?: Copy;
  readonly imprint?: Imprint;
  /** Puts the design into the PDF. */
  readonly attachDesign?: boolean;
}

export async function writePattern(
  terminal: Terminal,
  design: Design,
  { paper, units = 'both', place, copy, imprint, attachDesign = false }: PatternPlace,
): Promise<Result<null>> {
  const made = await makePattern(design, {
    paper,
    units,
    attachDesign,
    date: new Date(),
    ...(copy && { copy }),
    ...(imprint && { imprint }),
  });
  if (!made.ok) return made;
  const { bytes, pages, notices } = made.value;
  for (const notice of notices) terminal.remark(`${notice}\n`);
  const pdf = `${place} ${papers[paper].name}.pdf`;
  const written = await writeOutput(terminal, pdf, bytes, `${counted(pages, 'page')}, ${bytes.length} bytes`);
  if (!written.ok) return written;
  const picture = await makeChartPng(design, copy);
  return writeOutput(terminal, `${place} chart.png`, picture, `${picture.length} bytes`);
}
