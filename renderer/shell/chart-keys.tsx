/** What keys do while the chart has the focus, to be read in the command list. */
import { aboutHost } from '../host.ts';

/** `Mod` is the platform's own key. */
const chartKeys: readonly (readonly [keys: string, does: string])[] = [
  ['Arrow keys', 'move the cell cursor by one cord or row; a chosen patch moves with them'],
  ['Shift or Mod + arrow keys', 'ten cells at a time'],
  ['Alt + arrow keys', 'move all cells of the layer; with Shift by ten'],
  ['Home, End', 'the first and the last cord of the row'],
  ['Page Up, Page Down', 'ten rows up or down'],
  ['Space, Enter', 'use the tool here; for a line or a shape, once where it begins and once where it ends'],
  ['Enter', 'ties down a patch, text or motif that can still be moved'],
  ['Escape', 'drops what was begun; lets go of a patch'],
  ['Delete', 'unpicks the chosen patch'],
  ['Tab', 'leaves the chart; F6 goes round the parts of the screen'],
];

export function ChartKeys() {
  const mod = aboutHost().platform === 'mac' ? '⌘' : 'Ctrl';
  return (
    <details className="chart-keys">
      <summary>Keys on the chart</summary>
      <dl>
        {chartKeys.map(([keys, does]) => (
          <div key={keys}>
            <dt>{keys.replace('Mod', mod)}</dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}
