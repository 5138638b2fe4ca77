/** What can be done with the design's yarns: add, change, move, replace, merge, remove. Each can be undone. */
import { BARE, codeOf, type YarnId } from '../../../shared/design/codes.ts';
import type { Design } from '../../../shared/design/design.ts';
import type { Edit } from '../../../shared/design/edits.ts';
import type { Yarn } from '../../../shared/design/schema.ts';
import {
  addYarn,
  changeYarn,
  mergeYarns,
  moveYarn,
  removeYarn,
  replaceYarnEverywhere,
} from '../../../shared/design/yarn-edits.ts';
import type { Result } from '../../../shared/result.ts';
import { alphabet } from '../../../shared/yarn/symbols.ts';
import { tell, tellProblem } from '../../shell/notices.tsx';
import { change } from '../../store/changing.ts';
import { chooseCode, studio } from '../../store/studio.ts';
import { askForOther } from './other-yarn-sheet.tsx';
import { askForYarn } from './yarn-sheet.tsx';

/** In the order in which new yarns take them. */
export const symbolTexts: readonly string[] = alphabet.map(({ text }) => text);

/** The next or previous entry of the list, bare cord included. */
export function stepYarn(by: 1 | -1): void {
  const { open } = studio.getState();
  if (!open) return;
  const codes = [...open.design.yarns.map(({ id }) => codeOf(id)), BARE];
  const at = codes.indexOf(open.code);
  chooseCode(codes[(at + by + codes.length) % codes.length]!);
}

export async function addAYarn(): Promise<void> {
  const design = studio.getState().open?.design;
  if (!design) return;
  const like = design.yarns.find(({ id }) => id === design.ground) ?? design.yarns[0]!;
  const { diameterMm, metresPer100G, skeinG } = like;
  const look = { name: 'New yarn', color: '#8a6f9e', diameterMm, metresPer100G, skeinG };
  const added = addYarn(design, symbolTexts, look);
  if (!added.ok) return tellProblem(added.problem.sentence);
  const yarn = newYarnsOf(added.value)?.at(-1);
  if (!yarn) return;
  const wanted = await askForYarn('Add a yarn', yarn, design.yarns);
  if (!wanted) return;
  // Nothing else changes the design while the dialog is open.
  change('Add a yarn', { kind: 'set', field: 'yarns', value: [...design.yarns, wanted] });
  chooseCode(codeOf(wanted.id));
}

export async function changeChosenYarn(): Promise<void> {
  const chosen = chosenYarn();
  if (!chosen) return;
  const { design, yarn } = chosen;
  const wanted = await askForYarn('Change this yarn', yarn, othersOf(chosen));
  if (wanted) make('Change a yarn', changeYarn(design, yarn.id, wanted));
}

/** The chosen yarn one place up or down the list. */
export function moveChosenYarn(by: 1 | -1): void {
  const chosen = chosenYarn();
  if (!chosen) return;
  const { design, yarn } = chosen;
  const at = design.yarns.indexOf(yarn);
  const to = at + by;
  if (design.yarns[to]) moveYarnTo(yarn.id, to);
  else tell(`“${yarn.name}” is the ${by < 0 ? 'first' : 'last'} yarn already.`);
}

/** `to` is the place in the list that the yarn has afterwards, from 0. */
export function moveYarnTo(id: YarnId, to: number): void {
  const design = studio.getState().open?.design;
  const yarn = design?.yarns.find((each) => each.id === id);
  if (!design || !yarn || design.yarns[to] === yarn) return;
  change('Move a yarn', moveYarn(design, id, to));
  tell(`“${yarn.name}” is yarn ${to + 1} of ${design.yarns.length}.`);
}

export async function replaceChosenYarn(): Promise<void> {
  const chosen = chosenYarn();
  if (!chosen || isOnlyYarn(chosen)) return;
  const into = await askForOther({
    title: 'Replace a yarn everywhere',
    deed: 'Replace everywhere',
    yarn: chosen.yarn,
    others: othersOf(chosen),
    tell: (yarn, other) =>
      `Every knot of “${yarn}”, on all layers, is tied with “${other}” from now on. “${yarn}” stays in the list, without knots, to be used again.`,
  });
  if (!into) return;
  change('Replace a yarn', replaceYarnEverywhere(chosen.design, chosen.yarn.id, into));
  chooseCode(codeOf(into));
}

export async function mergeChosenYarn(): Promise<void> {
  const chosen = chosenYarn();
  if (!chosen || isOnlyYarn(chosen)) return;
  const into = await askForOther({
    title: 'Merge two yarns into one',
    deed: 'Merge',
    yarn: chosen.yarn,
    others: othersOf(chosen),
    tell: (yarn, other) =>
      `Every knot of “${yarn}”, on all layers, becomes one of “${other}”, and “${yarn}” is taken off the list. To keep “${yarn}” for later, replace it instead.`,
  });
  if (!into) return;
  if (make('Merge yarns', mergeYarns(chosen.design, chosen.yarn.id, into))) chooseCode(codeOf(into));
}

export function removeChosenYarn(): void {
  const chosen = chosenYarn();
  if (!chosen) return;
  if (make('Remove a yarn', removeYarn(chosen.design, chosen.yarn.id)))
    chooseCode(codeOf(chosen.design.ground));
}

/** The ground fills the background, and its thickness sets the gauge where no swatch does. */
export function makeChosenYarnGround(): void {
  const chosen = chosenYarn();
  if (!chosen) return;
  if (chosen.yarn.id === chosen.design.ground) tellProblem(`“${chosen.yarn.name}” is the ground already.`);
  else change('Change the ground', { kind: 'set', field: 'ground', value: chosen.yarn.id });
}

export interface Chosen {
  readonly design: Design;
  readonly yarn: Yarn;
}

/** The yarn that is chosen; null, and told why, where there is none. */
export function chosenYarn(): Chosen | null {
  const { open } = studio.getState();
  if (!open) return null;
  const yarn = open.design.yarns.find(({ id }) => codeOf(id) === open.code);
  if (yarn) return { design: open.design, yarn };
  tellProblem('Bare cord is no yarn. Choose a yarn first.');
  return null;
}

function make(label: string, edit: Result<Edit>): boolean {
  if (edit.ok) change(label, edit.value);
  else tellProblem(edit.problem.sentence);
  return edit.ok;
}

function newYarnsOf(edit: Edit): readonly Yarn[] | null {
  return edit.kind === 'set' && edit.field === 'yarns' ? edit.value : null;
}

function othersOf({ design, yarn }: Chosen): Yarn[] {
  return design.yarns.filter(({ id }) => id !== yarn.id);
}

function isOnlyYarn({ design }: Chosen): boolean {
  if (design.yarns.length > 1) return false;
  tellProblem('This is the only yarn. Add another one first.');
  return true;
}
