/** What is done with the stash while a design is open. Each gives the words for what was done, or why it was not. */
import { codeOf, type YarnId } from '../../../../shared/design/codes.ts';
import { addYarns, changeYarn, type YarnLook } from '../../../../shared/design/yarn-edits.ts';
import { lookOfStashYarn, type StashYarn } from '../../../../shared/yarn/stash.ts';
import { choose } from '../../../shell/dialogs.tsx';
import { change } from '../../../store/changing.ts';
import { chooseCode, studio } from '../../../store/studio.ts';
import { symbolTexts } from '../yarn-deeds.ts';
import { withoutYarn, withYarnAdded, withYarnChanged, withYarnPutIn } from './stash-changes.ts';
import { stashNow, writeStash } from './stash-store.ts';
import { askForStashYarn } from './stash-yarn-sheet.tsx';

/** Copies of the yarns at the end of the design's list, as one step; the first of them is drawn with. */
export function takeIntoDesign(yarns: readonly StashYarn[]): string {
  const design = studio.getState().open?.design;
  if (!design || yarns.length === 0) return '';
  const added = addYarns(design, symbolTexts, yarns.map(lookOfStashYarn));
  if (!added.ok) return added.problem.sentence;
  change('Take yarns from the stash', added.value);
  const first = studio.getState().open?.design.yarns[design.yarns.length];
  if (first) chooseCode(codeOf(first.id));
  return yarns.length === 1 ? `Took “${yarns[0]!.name}”.` : `Took ${yarns.length} yarns.`;
}

/** The design's yarn gets another label: its knots are tied with this yarn of the stash. */
export function takeInstead(id: YarnId, yarn: StashYarn): string {
  const design = studio.getState().open?.design;
  const old = design?.yarns.find((each) => each.id === id);
  if (!design || !old) return '';
  // A price that the stash does not tell must not be left from the yarn before.
  const changed = changeYarn(design, id, { price: undefined, ...lookOfStashYarn(yarn) });
  if (!changed.ok) return changed.problem.sentence;
  change('Use a yarn of the stash', changed.value);
  return `What was “${old.name}” is “${yarn.name}” now. Undo takes it back.`;
}

export async function putIntoStash(look: YarnLook): Promise<string> {
  const yarns = withYarnPutIn(stashNow()?.yarns ?? [], look);
  if (!yarns) return `“${look.name}” is in the stash already.`;
  return (await writeStash(yarns)) || `“${look.name}” is in the stash now.`;
}

/** `like` gives the new yarn its measures. */
export async function addToStash(like: YarnLook): Promise<string> {
  const { diameterMm, metresPer100G, skeinG } = like;
  const look = { name: '', color: '#8a6f9e', diameterMm, metresPer100G, skeinG, ownedSkeins: 1 };
  const label = await askForStashYarn('Add a yarn to the stash', { look, notes: '' });
  if (!label) return '';
  const yarns = withYarnAdded(stashNow()?.yarns ?? [], label.look, label.notes);
  return (await writeStash(yarns)) || `“${label.look.name}” is in the stash now.`;
}

export async function changeInStash(at: number): Promise<string> {
  const yarns = stashNow()?.yarns ?? [];
  const yarn = yarns[at];
  if (!yarn) return '';
  const before = { look: lookOfStashYarn(yarn), notes: yarn.notes ?? '' };
  const label = await askForStashYarn('Change a yarn of the stash', before);
  return label ? writeStash(withYarnChanged(yarns, at, label.look, label.notes)) : '';
}

export async function removeFromStash(at: number): Promise<string> {
  const yarns = stashNow()?.yarns ?? [];
  const yarn = yarns[at];
  if (!yarn) return '';
  const text = `“${yarn.name}” is taken off the list of yarns you own. Designs that use it keep it.`;
  const sure = await choose('Remove it from the stash?', text, [
    { value: 'remove', label: 'Remove' },
    { value: 'keep', label: 'Keep' },
  ]);
  return sure === 'remove' ? (await writeStash(withoutYarn(yarns, at))) || `Removed “${yarn.name}”.` : '';
}
