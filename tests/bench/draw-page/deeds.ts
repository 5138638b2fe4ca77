/** The deeds that are measured, each done by the studio and by bare canvas calls. */
import { hand } from '../../../renderer/draw/hand/hand.ts';
import { change, undoStep } from '../../../renderer/store/changing.ts';
import { changeDrawing, chooseCode, studio } from '../../../renderer/store/studio.ts';
import { zoomed } from '../../../renderer/surface/view.ts';
import type { Cell } from '../../../shared/chart/tools/cell.ts';
import { nibCells } from '../../../shared/chart/tools/nib.ts';
import { type Both, height, width } from './stage.ts';

export interface Deed {
  readonly name: string;
  /** 'seen': bare calls paint again all that is seen. 'cells': nothing but the cells' own pixels. */
  readonly bareDraws: 'seen' | 'cells';
  /** Needs a chart that one yarn covers. */
  readonly isOnCovered?: boolean;
  readonly begin?: (both: Both) => void;
  readonly larkrow: (both: Both, i: number) => void;
  readonly bare: (both: Both, i: number) => void;
  readonly end?: (both: Both) => void;
}

/** Round a small ring in the upper left quarter, near the chart's middle: its images lie in the other quarters. */
function placeOf({ design }: Both, i: number): Cell {
  const around = (i % 40) / 40;
  return {
    row: Math.floor(design.rows / 2 - 16 + 9 * Math.sin(around * 2 * Math.PI)),
    column: Math.floor(design.columns / 2 - 16 + 9 * Math.cos(around * 2 * Math.PI)),
  };
}

const codeAt = (i: number) => 1 + (Math.floor(i / 40) % 6);

/** A pointer move with a nib, from where it was to the next cell. */
function strokePart(nib: number, bareDraws: Deed['bareDraws']): Deed {
  const cells = nibCells(nib, 'round');
  return {
    name: `stroke, nib ${nib}`,
    bareDraws,
    begin: (both) => {
      studio.setState({ tool: 'knot' });
      changeDrawing({ width: nib, nib: 'round' });
      hand.press(placeOf(both, 0));
    },
    larkrow: (both, i) => {
      if (i % 40 === 0) chooseCode(codeAt(i));
      hand.move([placeOf(both, i)]);
      both.surface.drawNow();
      both.paintSurface();
    },
    bare: (both, i) => {
      const { row, column } = placeOf(both, i);
      const nibbed = cells.map((each) => ({ row: row + each.row, column: column + each.column }));
      const painted = both.bare.paintMirrored(both.design.layers.length - 1, nibbed, codeAt(i));
      if (bareDraws === 'seen') both.bare.drawAll(both.view);
      else both.bare.drawCells(both.view, painted);
      both.paintBare();
    },
    end: () => hand.release(),
  };
}

const beforeFill = new WeakMap<Both, Uint8Array>();

export const deeds: readonly Deed[] = [
  strokePart(1, 'seen'),
  strokePart(1, 'cells'),
  strokePart(5, 'seen'),
  {
    name: 'layer toggle',
    bareDraws: 'seen',
    larkrow: ({ design, surface, ...both }) => {
      const { id } = design.layers[6]!;
      const shown = studio.getState().open!.design.layers[6]!.visible;
      change('Layer', { kind: 'set-layer', layer: id, field: 'visible', value: !shown });
      drawWhole(surface);
      both.paintSurface();
    },
    bare: (both) => {
      both.bare.toggle(6);
      both.bare.drawAll(both.view);
      both.paintBare();
    },
  },
  {
    name: 'pan',
    bareDraws: 'seen',
    larkrow: ({ surface, view, ...both }, i) => {
      surface.view = { ...view, x: view.x + (i % 40), y: view.y + (i % 23) };
      surface.drawNow();
      both.paintSurface();
    },
    bare: ({ bare, view, ...both }, i) => {
      bare.drawAll({ ...view, x: view.x + (i % 40), y: view.y + (i % 23) });
      both.paintBare();
    },
  },
  {
    // A zoom frame: another scale each time, as while fingers pinch. On both sides the tiles of before are stretched.
    name: 'zoom',
    bareDraws: 'seen',
    larkrow: ({ surface, view, ...both }, i) => {
      // Back to the size that the tiles were made for, then to the next one: two steps of the view, one frame.
      surface.view = view;
      surface.zoom(factorAt(i), { x: width / 2, y: height / 2 });
      surface.drawNow();
      both.paintSurface();
    },
    bare: ({ bare, view, ...both }, i) => {
      const size = { pitchMm: 5, rowHeightMm: 4.8 };
      bare.drawAll(zoomed(view, size, factorAt(i), width / 2, height / 2), true);
      both.paintBare();
    },
  },
  {
    name: 'fill all',
    bareDraws: 'seen',
    isOnCovered: true,
    larkrow: (both, i) => {
      studio.setState({ tool: 'fill' });
      changeDrawing({ fill: 'touching' });
      chooseCode(2 + (i % 2));
      const middle = { row: both.design.rows / 2, column: both.design.columns / 2 };
      hand.press(middle);
      hand.release();
      drawWhole(both.surface);
      both.paintSurface();
    },
    bare: (both, i) => {
      const { design, bare } = both;
      beforeFill.set(both, bare.copyTop());
      bare.fill((design.rows / 2) * design.columns + design.columns / 2, 2 + (i % 2));
      bare.drawAll(both.view);
      both.paintBare();
    },
  },
  {
    name: 'undo fill',
    bareDraws: 'seen',
    isOnCovered: true,
    larkrow: (both) => {
      undoStep();
      drawWhole(both.surface);
      both.paintSurface();
    },
    bare: (both) => {
      const before = beforeFill.get(both);
      if (before) both.bare.putBack(before);
      both.bare.drawAll(both.view);
      both.paintBare();
    },
  },
];

const factorAt = (i: number) => 1 + (1 + (i % 12)) * 0.004;

/** Until no tile is missing, however many frames that would take. */
function drawWhole(surface: Both['surface']): void {
  let isWhole = false;
  while (!isWhole) isWhole = surface.drawNow();
}
