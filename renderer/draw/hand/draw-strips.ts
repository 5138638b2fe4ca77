/** From strips to an edit of the layer drawn on: copied by the symmetry, cut at the chart's edge. */
import { copyStrips } from '../../../shared/chart/symmetry/copy-strips.ts';
import { paintStrips, type Strips } from '../../../shared/chart/tools/strips.ts';
import type { Paint } from '../../../shared/design/edits.ts';
import type { Means } from './deed.ts';

export function drawStrips({ open, drawing }: Means, strips: Strips): Paint | null {
  return paintStrips(open.layer, copyStrips(strips, drawing.symmetry, open.design), open.design);
}
