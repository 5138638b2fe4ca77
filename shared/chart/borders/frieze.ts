/**
 * A band of motifs that repeats along itself, as a function of place: `depth` is counted from the band's outside,
 * `along` from the left end of an edge that is seen with the outside up.
 */
import { EMPTY } from '../../design/codes.ts';
import type { Block } from '../patch/block.ts';
import { type FriezeGroup, friezeGroups, type MotifImage } from './frieze-groups.ts';

export interface Frieze {
  /** Cells from the band's outside to its inside. */
  readonly depth: number;
  /** Mirrors stand across the band. */
  readonly mirrorsAcross: boolean;
  /** The code at a place, both counted from 0; EMPTY where the motif has no cell. */
  readonly codeAt: (along: number, depth: number) => number;
}

/**
 * The frieze along an edge of `edgeCells` cells: as many whole periods as fit, centred, and what is left over at either
 * end shows part of the next. So the middle of the edge is the middle of a period or the place between two. With
 * mirrors across, both are mirrors, and the edge is symmetric about its middle whatever its length: where that is a
 * cell, and not a place between two, the images that meet at such a mirror share it, and periods are that much
 * shorter. Other friezes may stand half a cell beside the middle. The motif has at least one cell.
 */
export function friezeAlong(group: FriezeGroup, motif: Block, edgeCells: number): Frieze {
  const { images } = friezeGroups.find((each) => each.group === group)!;
  const mirrorsAcross = images[0]!.includes('V');
  const { columns, middle } = periodOf(images[0]!, motif.columns, edgeCells, mirrorsAcross);
  const start = middle - Math.floor(edgeCells / 2);
  return {
    depth: motif.rows * images.length,
    mirrorsAcross,
    codeAt: (along, depth) => {
      const { place, column } = columns[within(start + along, columns.length)]!;
      const image = images[Math.floor(depth / motif.rows)]?.[place];
      if (!image) return EMPTY;
      const row = depth % motif.rows;
      return motif.cells[(upsideDown[image] ? motif.rows - 1 - row : row) * motif.columns + column]!;
    },
  };
}

const reversed: Record<MotifImage, boolean> = { I: false, V: true, H: false, R: true };
const upsideDown: Record<MotifImage, boolean> = { I: false, V: false, H: true, R: true };

interface PeriodColumn {
  /** The place in a line of images. */
  readonly place: number;
  /** The motif's column. */
  readonly column: number;
}

interface Period {
  readonly columns: readonly PeriodColumn[];
  /** The column that lies right of the edge's middle, or on it where that is a cell. */
  readonly middle: number;
}

function periodOf(
  line: readonly MotifImage[],
  motifColumns: number,
  edgeCells: number,
  mirrorsAcross: boolean,
): Period {
  const half = line.length / 2;
  const shares = mirrorsAcross && edgeCells % 2 === 1;
  const periodCells = line.length * motifColumns - (shares ? half : 0);
  const whole = Math.floor(edgeCells / periodCells);
  const isBetweenTwo = whole > 0 && whole % 2 === 0;
  if (line.length === 1) {
    return {
      columns: columnsOf('I', 0, motifColumns),
      middle: isBetweenTwo ? 0 : Math.floor(motifColumns / 2),
    };
  }
  const columns: PeriodColumn[] = [];
  let middle = 0;
  for (let i = 0; i < line.length; i++) {
    // The edge's middle comes before the image at `half`: mirrors stand there and before every other image from it.
    if (i === half) middle = columns.length - (shares ? 1 : 0);
    const place = (i + (isBetweenTwo ? half : 0)) % line.length;
    const sharesFirst = shares && (i - half) % 2 === 0;
    columns.push(...columnsOf(line[place]!, place, motifColumns).slice(sharesFirst ? 1 : 0));
  }
  return { columns, middle };
}

function columnsOf(image: MotifImage, place: number, motifColumns: number): PeriodColumn[] {
  const columns = Array.from({ length: motifColumns }, (_, column) => ({ place, column }));
  return reversed[image] ? columns.reverse() : columns;
}

function within(value: number, period: number): number {
  return ((value % period) + period) % period;
}
