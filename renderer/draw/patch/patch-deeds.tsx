/** What can be done with the chosen patch. Whatever changes cells is one step of the history. */
import type { Block } from '../../../shared/chart/patch/block.ts';
import { blockOfMotif } from '../../../shared/chart/patch/block-of-motif.ts';
import { erasureStrips } from '../../../shared/chart/patch/block-strips.ts';
import { invertMask } from '../../../shared/chart/patch/combine-masks.ts';
import { liftBlock, liftSeen } from '../../../shared/chart/patch/lift-block.ts';
import type { Mask } from '../../../shared/chart/patch/mask.ts';
import { maskAll, maskOfYarn } from '../../../shared/chart/patch/mask-of-cells.ts';
import {
  flippedLeftRight,
  flippedTopBottom,
  turnedHalf,
  turnedLeft,
  turnedRight,
} from '../../../shared/chart/patch/turn-block.ts';
import { markedStrips } from '../../../shared/chart/tools/marked-strips.ts';
import { paintStrips, type Strips } from '../../../shared/chart/tools/strips.ts';
import type { CommandId } from '../../../shared/commands.ts';
import { layerOf } from '../../../shared/design/design.ts';
import { tell, tellProblem } from '../../shell/notices.tsx';
import { change, endStroke } from '../../store/changing.ts';
import type { OpenDesign } from '../../store/state.ts';
import { studio } from '../../store/studio.ts';
import { drawStrips } from '../hand/draw-strips.ts';
import { dropLifted, holdBlock, liftedNow, liftPatch, moveLifted, turnLifted } from '../hand/lifting.ts';
import { whyNotDraw } from '../hand/why-not-draw.ts';
import { type Chosen, chosenPatch } from './chosen-patch.ts';
import { clipboard, keepOnClipboard } from './clipboard.ts';
import { keepMotif } from './keep-motif.tsx';
import { repeatPatch } from './repeat-patch.tsx';

/** Moves the patch by cells, taking it up where it lies. */
export function nudgePatch(rowsBy: number, columnsBy: number): void {
  if (liftedNow() || lifts('Move a patch', false)) moveLifted(rowsBy, columnsBy);
}

/** Ties down what is in the air; where nothing is, lets go of the patch. */
function letGoOfPatch(): void {
  if (liftedNow()) endStroke();
  else studio.setState({ patch: null });
}

function turn(label: string, how: (block: Block) => Block): () => void {
  return () => {
    if (liftedNow() || lifts(label, false)) turnLifted(how);
  };
}

function lifts(label: string, isCopy: boolean): boolean {
  const chosen = chosenPatch();
  if (!chosen || !mayDraw(chosen.open)) return false;
  endStroke();
  if (liftPatch(label, isCopy)) return true;
  tellNothingHere(chosen.open);
  return false;
}

function mayDraw(open: OpenDesign): boolean {
  const fault = whyNotDraw(open);
  if (fault) tellProblem(fault);
  return !fault;
}

function tellNothingHere({ design, layer }: OpenDesign): void {
  tellProblem(
    `Nothing of the patch lies on “${layerOf(design, layer).name}”. Choose the layer that holds it.`,
  );
}

/** Onto the clipboard: the cells of the layer drawn on, or what is seen through all layers. */
function copy(isSeen: boolean, word: 'Copied' | 'Cut' = 'Copied'): boolean {
  endStroke();
  const chosen = chosenPatch();
  if (!chosen) return false;
  const { open, mask } = chosen;
  const block = isSeen ? liftSeen(open.chart, mask) : liftBlock(layerOf(open.design, open.layer).rows, mask);
  const { top, left } = mask.bounds!;
  const isKept = keepOnClipboard(block, open.design, { opening: open.opening, row: top, column: left });
  if (isKept) tell(`${word} ${block.columns} × ${block.rows} cells.`);
  else tellNothingHere(open);
  return isKept;
}

function cut(): void {
  const { open } = studio.getState();
  if (open && mayDraw(open) && copy(false, 'Cut')) unpickPatch('Cut');
}

function paste(): void {
  const kept = clipboard();
  const { open, under } = studio.getState();
  if (!open) return;
  if (!kept) {
    tell('Nothing was copied yet. Choose a patch and copy it first.');
    return;
  }
  if (!mayDraw(open)) return;
  endStroke();
  const fitted = blockOfMotif(kept.motif, open.design);
  if (!fitted.ok) {
    tellProblem(fitted.problem.sentence);
    return;
  }
  const { block, newYarns } = fitted.value;
  const isHome = kept.opening === open.opening && kept.row < open.design.rows;
  const at = isHome ? kept : (under ?? { row: 0, column: 0 });
  studio.setState({ tool: 'patch' });
  holdBlock('Paste', block, at.row, at.column, { yarns: newYarns });
}

/** Draws on the chosen cells of the layer; the symmetry copies that too. */
function draw(label: string, stripsOf: (chosen: Chosen) => Strips): void {
  endStroke();
  const chosen = chosenPatch();
  if (!chosen || !mayDraw(chosen.open)) return;
  const { open } = chosen;
  const edit = drawStrips({ open, drawing: studio.getState().drawing }, stripsOf(chosen));
  if (edit) change(label, edit);
}

function unpickPatch(label: string): void {
  if (liftedNow()) dropLifted();
  else draw(label, ({ mask }) => erasureStrips(mask));
}

function fillPatch(): void {
  draw('Fill a patch', ({ open, mask }) => markedStrips(mask.chosen, 1, mask, open.code));
}

/** The chosen cells as they are seen, drawn on the layer that is drawn on. */
function gatherPatch(): void {
  endStroke();
  const chosen = chosenPatch();
  if (!chosen || !mayDraw(chosen.open)) return;
  const { open, mask } = chosen;
  const { columns } = mask;
  const cells: number[] = [];
  mask.chosen.forEach((is, i) => {
    if (is === 1) cells.push(Math.floor(i / columns), i % columns, 1, open.chart.cells[i]!);
  });
  const edit = paintStrips(open.layer, Int32Array.from(cells), open.design);
  if (edit) change('Gather a patch', edit);
}

function choose(maskOf: (open: OpenDesign, now: Mask | null) => Mask): () => void {
  return () => {
    endStroke();
    const { open, patch } = studio.getState();
    if (!open) return;
    const mask = maskOf(open, patch?.mask ?? null);
    studio.setState({ tool: 'patch', patch: mask.bounds ? { mask, lifted: null } : null });
  };
}

export const patchCommands = {
  cut,
  copy: () => void copy(false),
  'copy-seen': () => void copy(true),
  paste,
  'choose-all': choose(({ design }) => maskAll(design)),
  'choose-yarn-cells': choose(({ chart, code }) => maskOfYarn(chart, code)),
  'invert-patch': choose(({ design }, now) => (now ? invertMask(now) : maskAll(design))),
  'let-go-patch': letGoOfPatch,
  'unpick-patch': () => unpickPatch('Unpick a patch'),
  'fill-patch': fillPatch,
  'gather-patch': gatherPatch,
  'flip-left-right': turn('Flip a patch', flippedLeftRight),
  'flip-top-bottom': turn('Flip a patch', flippedTopBottom),
  'turn-right': turn('Turn a patch', turnedRight),
  'turn-left': turn('Turn a patch', turnedLeft),
  'turn-half': turn('Turn a patch', turnedHalf),
  'copy-in-place': () => {
    lifts('Copy a patch', true);
  },
  'repeat-patch': repeatPatch,
  'keep-motif': keepMotif,
} satisfies Partial<Record<CommandId, () => void>>;
