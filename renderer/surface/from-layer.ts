import { EMPTY } from '../../shared/design/codes.ts';
import { type Design, layerOf } from '../../shared/design/design.ts';

/** True for each cord (from 0) whose cell in row `row` (from 0) is seen of this layer, and not of one above it. */
export function cellsFromLayer(design: Design, id: string, row: number): boolean[] {
  const { layers, columns } = design;
  const layer = layerOf(design, id);
  const above = layers.slice(layers.indexOf(layer) + 1).filter(({ visible }) => visible);
  const isSeen = (column: number) =>
    layer.visible &&
    layer.rows[row]![column] !== EMPTY &&
    above.every(({ rows }) => rows[row]![column] === EMPTY);
  return Array.from({ length: columns }, (_, column) => isSeen(column));
}
