/**
 * What is done with layers: added, moved, merged, shown, locked, and their content moved by cells. All act on the
 * layer drawn on, each change is one step of the history, and each says what it did, since the panel may be folded.
 */
import type { CommandId } from '../../../shared/commands.ts';
import { EMPTY } from '../../../shared/design/codes.ts';
import { type Layer, layerOf } from '../../../shared/design/design.ts';
import type { Edit } from '../../../shared/design/edits.ts';
import {
  addLayer,
  duplicateLayer,
  mergeDown,
  moveContent,
  moveLayer,
  removeLayer,
  renameLayer,
} from '../../../shared/design/layer-edits.ts';
import type { Result } from '../../../shared/result.ts';
import { tell, tellProblem } from '../../shell/notices.tsx';
import { beginStroke, change, chooseLayer, stroke } from '../../store/changing.ts';
import type { OpenDesign, Stroke } from '../../store/state.ts';
import { studio } from '../../store/studio.ts';
import { whyNotDraw } from '../hand/why-not-draw.ts';
import { placeInWords } from './layer-words.ts';
import { startRenaming } from './renaming.ts';

interface Chosen {
  readonly open: OpenDesign;
  readonly layer: Layer;
  /** Its place from 0 at the bottom. */
  readonly at: number;
}

/** A layer put above the one drawn on is drawn on from now on. */
function put(label: string, edit: typeof addLayer): () => void {
  return () =>
    withChosen(({ open, layer }) => {
      const put = edit(open.design, layer.id);
      if (!make(label, put) || !put.ok) return;
      chooseLayer(put.value.layer.id);
      tellPlace(put.value.layer.id);
    });
}

/** Takes the layer to a place of the list, from 0 at the bottom. */
export function moveLayerTo(id: string, to: number): void {
  const { open } = studio.getState();
  if (open && make('Move a layer', moveLayer(open.design, id, to))) tellPlace(id);
}

function moveBy(by: 1 | -1): () => void {
  return () => withChosen(({ layer, at }) => moveLayerTo(layer.id, at + by));
}

function choose(by: 1 | -1): () => void {
  return () =>
    withChosen(({ open, layer, at }) => {
      const next = open.design.layers[at + by];
      if (next) chooseLayer(next.id);
      tellPlace(next?.id ?? layer.id);
    });
}

/** True where the name was taken. */
export function nameLayer(id: string, name: string): boolean {
  const { open } = studio.getState();
  if (!open || layerOf(open.design, id).name === name.trim()) return true;
  return make('Rename a layer', renameLayer(open.design, id, name));
}

export function showOrHide({ id, visible }: Layer): void {
  change(visible ? 'Hide a layer' : 'Show a layer', {
    kind: 'set-layer',
    layer: id,
    field: 'visible',
    value: !visible,
  });
}

export function lockOrUnlock({ id, locked }: Layer): void {
  change(locked ? 'Unlock a layer' : 'Lock a layer', {
    kind: 'set-layer',
    layer: id,
    field: 'locked',
    value: !locked,
  });
}

function moveContentBy(columns: number, rows: number): () => void {
  return () =>
    withChosen(({ open, layer }) => {
      const fault = whyNotDraw(open);
      if (fault) {
        tellProblem(fault);
        return;
      }
      if (!moving || open.stroke !== moving.stroke) {
        if (layer.rows.every((row) => row.every((code) => code === EMPTY))) {
          tell(`“${layer.name}” has no cells to move.`);
          return;
        }
        beginStroke('Move a layer’s cells');
        moving = { stroke: studio.getState().open!.stroke!, columns: 0, rows: 0 };
      }
      moving = { ...moving, columns: moving.columns + columns, rows: moving.rows + rows };
      stroke(moveContent(moving.stroke.from, layer.id, moving.columns, moving.rows), true);
    });
}

/**
 * How far the cells were moved in the stroke that is open. Each move starts from where they were at first, so that what
 * went beyond the edge comes back with them, as long as nothing else is done between.
 */
let moving: { readonly stroke: Stroke; readonly columns: number; readonly rows: number } | null = null;

export const layerCommands = {
  'add-layer': put('Add a layer', addLayer),
  'duplicate-layer': put('Duplicate a layer', duplicateLayer),
  'merge-layer-down': () =>
    withChosen(({ open, layer, at }) => {
      if (make('Merge a layer down', mergeDown(open.design, layer.id)))
        tell(`“${layer.name}” is part of “${open.design.layers[at - 1]!.name}” now.`);
    }),
  'remove-layer': () =>
    withChosen(({ open, layer }) => {
      if (make('Remove a layer', removeLayer(open.design, layer.id))) tell(`“${layer.name}” is removed.`);
    }),
  'rename-layer': () => withChosen(({ layer }) => startRenaming(layer.id)),
  'show-layer': () =>
    withChosen(({ layer }) => {
      showOrHide(layer);
      tell(`“${layer.name}” is ${layer.visible ? 'hidden' : 'shown'}.`);
    }),
  'lock-layer': () =>
    withChosen(({ layer }) => {
      lockOrUnlock(layer);
      tell(`“${layer.name}” is ${layer.locked ? 'unlocked' : 'locked'}.`);
    }),
  'layer-above': choose(1),
  'layer-below': choose(-1),
  'layer-up': moveBy(1),
  'layer-down': moveBy(-1),
  'content-left': moveContentBy(-1, 0),
  'content-right': moveContentBy(1, 0),
  'content-up': moveContentBy(0, -1),
  'content-down': moveContentBy(0, 1),
  'content-left-ten': moveContentBy(-10, 0),
  'content-right-ten': moveContentBy(10, 0),
  'content-up-ten': moveContentBy(0, -10),
  'content-down-ten': moveContentBy(0, 10),
} satisfies Partial<Record<CommandId, () => void>>;

function withChosen(deed: (chosen: Chosen) => void): void {
  const { open } = studio.getState();
  if (!open) return;
  const layer = layerOf(open.design, open.layer);
  deed({ open, layer, at: open.design.layers.indexOf(layer) });
}

/** True where the change was made; else the person is told why not. */
function make(label: string, edit: Result<Edit>): boolean {
  if (edit.ok) change(label, edit.value);
  else tellProblem(edit.problem.sentence);
  return edit.ok;
}

function tellPlace(id: string): void {
  const layers = studio.getState().open?.design.layers ?? [];
  const at = layers.findIndex((layer) => layer.id === id);
  if (at >= 0) tell(`${placeInWords(layers[at]!, at, layers.length)}.`);
}
