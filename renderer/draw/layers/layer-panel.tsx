/**
 * The design's layers, the top one first, as they lie. One of them is drawn on: it has the outline. By keys: arrows
 * choose, Alt with an arrow moves the layer, F2 or Enter renames it, Delete removes it.
 */
import { useMemo, useRef } from 'react';
import type { CommandId } from '../../../shared/commands.ts';
import { gaugeOf } from '../../../shared/gauge/gauge.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { commandById } from '../../shell/keys.ts';
import { useToolbar } from '../../shell/use-toolbar.ts';
import { chooseLayer } from '../../store/changing.ts';
import { useStudio } from '../../store/use-studio.ts';
import { useListDrag } from '../list-drag.ts';
import { moveLayerTo } from './layer-deeds.ts';
import { layerIcons } from './layer-icons.tsx';
import { LayerRow } from './layer-row.tsx';
import { useRenaming } from './renaming.ts';
import { thumbnailColors } from './thumbnail.ts';
import './layers.css';

export function LayerPanel() {
  const layers = useStudio((state) => state.open?.design.layers);
  const chosen = useStudio((state) => state.open?.layer);
  const yarns = useStudio((state) => state.open?.design.yarns);
  const aspect = useStudio(({ open }) => (open ? aspectOf(open.design) : 1));
  const fade = useStudio((state) => state.views.fade);
  const renaming = useRenaming();
  const deedRow = useToolbar<HTMLDivElement>();
  const list = useRef<HTMLUListElement>(null);
  const { markOf, press, isDragEnd } = useListDrag(list, '.layer-thumbnail', (id: string, gap) => {
    const count = layers?.length ?? 0;
    const from = layers?.findIndex((layer) => layer.id === id) ?? -1;
    if (from < 0) return;
    // The list is shown from the top, and counted from the bottom.
    const above = count - gap;
    const to = above > from ? above - 1 : above;
    if (to !== from) moveLayerTo(id, to);
  });
  const colors = useMemo(() => thumbnailColors(yarns ?? []), [yarns]);
  const size = useMemo(() => thumbnailSize(aspect), [aspect]);
  if (!layers) return null;

  const onKey = (event: React.KeyboardEvent) => {
    if (event.target instanceof HTMLInputElement || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const run = (event.altKey ? altKeys : plainKeys)[event.key];
    if (!run) return;
    event.preventDefault();
    event.stopPropagation();
    run();
    // The row that is chosen now is drawn a moment later.
    requestAnimationFrame(() => {
      const isWriting = list.current?.querySelector('input');
      if (!isWriting) list.current?.querySelector<HTMLElement>('.layer-main[aria-pressed="true"]')?.focus();
    });
  };

  return (
    <section className="layers" aria-label="Layers">
      <ul ref={list} aria-label="Layers, the top one first" onKeyDown={onKey}>
        {layers
          .map((layer, at) => (
            <LayerRow
              key={layer.id}
              layer={layer}
              at={at}
              count={layers.length}
              isChosen={layer.id === chosen}
              isRenamed={layer.id === renaming}
              mark={markOf(layer.id, layers.length - 1 - at, layers.length)}
              colors={colors}
              size={size}
              press={press}
              choose={(id) => {
                if (!isDragEnd()) chooseLayer(id);
              }}
            />
          ))
          .reverse()}
      </ul>
      <div className="layer-deeds" role="toolbar" aria-label="What to do with layers" {...deedRow}>
        {deeds.map(([command, icon]) => (
          <button
            type="button"
            key={command}
            className="plain"
            aria-label={commandById(command).label}
            title={commandById(command).label}
            onClick={() => runCommand(command)}
          >
            {layerIcons[icon]}
          </button>
        ))}
        <button
          type="button"
          className="plain"
          aria-label="Fade the other layers"
          title="Fade the other layers"
          aria-pressed={fade}
          onClick={() => runCommand('view-fade')}
        >
          {layerIcons.fade}
        </button>
      </div>
    </section>
  );
}

const deeds: readonly (readonly [CommandId, keyof typeof layerIcons])[] = [
  ['add-layer', 'add'],
  ['duplicate-layer', 'duplicate'],
  ['layer-up', 'up'],
  ['layer-down', 'down'],
  ['merge-layer-down', 'merge'],
  ['remove-layer', 'remove'],
];

/** What keys do while the list has the focus. */
const plainKeys: Readonly<Record<string, () => void>> = {
  ArrowUp: () => runCommand('layer-above'),
  ArrowDown: () => runCommand('layer-below'),
  F2: () => runCommand('rename-layer'),
  Delete: () => runCommand('remove-layer'),
};
const altKeys: Readonly<Record<string, () => void>> = {
  ArrowUp: () => runCommand('layer-up'),
  ArrowDown: () => runCommand('layer-down'),
};

/** Width over height of the knotted picture. */
function aspectOf(design: Parameters<typeof gaugeOf>[0] & { columns: number; rows: number }): number {
  const { pitchMm, rowHeightMm } = gaugeOf(design);
  return (design.columns * pitchMm) / (design.rows * rowHeightMm);
}

/** The picture's size within the room that a row has for it, in CSS pixels. */
function thumbnailSize(aspect: number): { width: number; height: number } {
  const [most, least] = [{ width: 34, height: 30 }, 4];
  const height = Math.min(most.height, most.width / aspect);
  return {
    width: Math.round(Math.max(least, Math.min(most.width, height * aspect))),
    height: Math.round(Math.max(least, height)),
  };
}
