/** The tools that draw cells of one code: Knot, Unpick, Line, Rectangle, Ellipse; and those that act in one cell. */
import { type Cell, isInside } from '../../../shared/chart/tools/cell.ts';
import { ellipseStrips } from '../../../shared/chart/tools/ellipse-strips.ts';
import { fillStrips } from '../../../shared/chart/tools/fill-strips.ts';
import { lineStrips } from '../../../shared/chart/tools/line-strips.ts';
import { nibCells } from '../../../shared/chart/tools/nib.ts';
import { rectangleStrips } from '../../../shared/chart/tools/rectangle-strips.ts';
import { replaceYarnIn } from '../../../shared/chart/tools/replace-yarn.ts';
import { squared } from '../../../shared/chart/tools/squared.ts';
import { straightened } from '../../../shared/chart/tools/straightened.ts';
import type { Strips } from '../../../shared/chart/tools/strips.ts';
import { strokeStrips } from '../../../shared/chart/tools/stroke-strips.ts';
import { EMPTY } from '../../../shared/design/codes.ts';
import type { Design } from '../../../shared/design/design.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import { tell, tellProblem } from '../../shell/notices.tsx';
import { change } from '../../store/changing.ts';
import type { Drawing } from '../../store/drawing.ts';
import { chooseCode, studio } from '../../store/studio.ts';
import type { Deed, Means } from './deed.ts';
import { drawStrips } from './draw-strips.ts';

type DrawingTool = 'knot' | 'unpick' | 'line' | 'rectangle' | 'ellipse' | 'fill' | 'match' | 'replace';

export const drawingDeeds: Record<DrawingTool, Deed> = {
  knot: freehand('Knot', ({ open }) => open.code),
  unpick: freehand('Unpick', () => EMPTY),
  line: {
    label: 'Line',
    draws: true,
    between: ({ open, drawing }, from, to, { shift }) =>
      lineStrips(from, shift ? straight(open.design, from, to) : to, open.code, nibOf(drawing)),
    ghost: nibGhost,
    hasTwoEnds: () => true,
  },
  rectangle: shape('Rectangle', rectangleStrips),
  ellipse: shape('Ellipse', ellipseStrips),
  fill: {
    label: 'Fill',
    draws: true,
    at: (means, cell) => {
      const { open, drawing } = means;
      const edit = drawStrips(means, fillStrips(open.design, open.chart, cell, open.code, drawing.fill));
      if (edit) change('Fill', edit);
    },
  },
  match: {
    label: 'Match',
    draws: false,
    at: ({ open: { chart } }, cell) => {
      if (isInside(cell, chart)) chooseCode(chart.cells[cell.row * chart.columns + cell.column]!);
    },
  },
  replace: { label: 'Replace yarn', draws: true, at: replaceAt },
};

/** With Shift held where it is pressed, a freehand tool draws a straight line. */
function freehand(label: string, codeIn: (means: Means) => number): Deed {
  return {
    label,
    draws: true,
    along: (means, way) => strokeStrips(way, codeIn(means), nibOf(means.drawing)),
    between: (means, from, to) =>
      lineStrips(from, straight(means.open.design, from, to), codeIn(means), nibOf(means.drawing)),
    ghost: nibGhost,
  };
}

function shape(label: string, strips: typeof rectangleStrips): Deed {
  return {
    label,
    draws: true,
    between: ({ open, drawing: { filled, width } }, from, to, { shift }) => {
      const { pitchMm, rowHeightMm } = gaugeOf(open.design);
      const end = shift ? squared(from, to, pitchMm, rowHeightMm) : to;
      return strips(from, end, open.code, { filled, width });
    },
    hasTwoEnds: () => true,
  };
}

function straight(design: Design, from: Cell, to: Cell): Cell {
  const { pitchMm, rowHeightMm } = gaugeOf(design);
  return straightened(from, to, pitchMm, rowHeightMm);
}

function nibOf({ width, nib }: Drawing): readonly Cell[] {
  return nibCells(width, nib);
}

function nibGhost({ open, drawing }: Means, cell: Cell): Strips {
  return strokeStrips([cell], open.code, nibOf(drawing));
}

function replaceAt({ open, drawing }: Means, cell: Cell): void {
  const { design, chart, layer, code } = open;
  if (!isInside(cell, chart)) return;
  const from = chart.cells[cell.row * chart.columns + cell.column]!;
  if (from === code) {
    tell('This is the chosen yarn already.');
    return;
  }
  const { patch } = studio.getState();
  if (drawing.replaceIn === 'patch' && !patch) {
    tellProblem('No patch is chosen. Choose cells with Patch first, or replace in the layer or the chart.');
    return;
  }
  const edit =
    drawing.replaceIn === 'patch' && patch
      ? replaceYarnIn(design, from, code, { kind: 'patch', layer, mask: patch.mask })
      : drawing.replaceIn === 'layer'
        ? replaceYarnIn(design, from, code, { kind: 'layer', layer })
        : replaceYarnIn(design, from, code, { kind: 'chart' });
  if (edit.kind === 'together' && edit.edits.length === 0)
    tell('This yarn is not on the layer drawn on. Choose its layer, or replace in the whole chart.');
  else change('Replace yarn', edit);
}
