import { EMPTY } from '../../../shared/design/codes.ts';
import type { Design, Layer } from '../../../shared/design/design.ts';
import { mottledDesign } from './mottled-design.ts';

/**
 * A design of several layers: mottled all over at the bottom, and above it sheets with a checkerboard of mottled fields,
 * so that all of them are seen somewhere and none can be passed over. `top`: one more sheet above them, covered with
 * one yarn. The same cells each time.
 */
export function layeredDesign(columns: number, rows: number, layers: number, top: number | null): Design {
  const design = mottledDesign(columns, rows);
  const bottom = design.layers[0]!;
  const count = top === null ? layers : layers - 1;
  const sheets = Array.from({ length: count - 1 }, (_, i) => sheet(bottom, i + 1, fields(bottom, i + 1)));
  const covers =
    top === null
      ? []
      : [
          sheet(
            bottom,
            layers - 1,
            bottom.rows.map(() => new Uint8Array(columns).fill(top)),
          ),
        ];
  return { ...design, layers: [bottom, ...sheets, ...covers] };
}

const fieldCells = 12;

/** Every seventh field of a board is drawn, another one on each layer. */
function fields(bottom: Layer, index: number): Uint8Array[] {
  return bottom.rows.map((row, r) =>
    row.map((code, c) => {
      const field = Math.floor(r / fieldCells) * 3 + Math.floor(c / fieldCells) + index;
      return field % 7 === 0 ? ((code + index) % 6) + 1 : EMPTY;
    }),
  );
}

function sheet(bottom: Layer, index: number, rows: Uint8Array[]): Layer {
  return { ...bottom, id: `sheet-${index}`, name: `Sheet ${index}`, locked: false, rows };
}
