/** Saving. A new design goes on the shelf under its title; 'save as' asks where. */
import type { Handle, Stamp } from '../../shared/bridge.ts';
import { titleOfCopy } from '../../shared/design/title-of-copy.ts';
import { writeDesign } from '../../shared/design/write-design.ts';
import type { Problem } from '../../shared/result.ts';
import { host } from '../host.ts';
import { choose } from '../shell/dialogs.tsx';
import { tell, tellProblem } from '../shell/notices.tsx';
import { change, endStroke } from '../store/changing.ts';
import { markSaved, studio } from '../store/studio.ts';
import { openHandle } from './open-handle.ts';
import { placeToSave } from './places.ts';
import { suggestedName } from './suggested-name.ts';

/** True where the design is on disk afterwards. */
export async function save(): Promise<boolean> {
  takeWhatIsWritten();
  const { open } = studio.getState();
  if (!open) return false;
  if (open.home) return saveTo(open.home.design, open.home.stamp);
  return saveOnShelf(open.fileStem ?? open.design.title);
}

export async function saveAs(): Promise<boolean> {
  takeWhatIsWritten();
  const { open } = studio.getState();
  if (!open) return false;
  const place = await placeToSave('design', suggestedName(open.fileStem ?? open.design.title, '.larkrow'));
  return place ? saveTo(place.handle, null) : false;
}

/** A text that is being written becomes part of the design when its field is left: it is left here, and taken up again. */
function takeWhatIsWritten(): void {
  const field = document.activeElement;
  if (!(field instanceof HTMLTextAreaElement)) return;
  field.blur();
  field.focus();
}

async function saveOnShelf(title: string): Promise<boolean> {
  const place = await host().call('shelf.newPlace', { title });
  if (place.ok) return saveTo(place.value.handle, null);
  tellProblem(place.problem.sentence);
  return false;
}

/** Mine beside theirs on the shelf, under a title of its own, so that they can be told apart there. */
async function saveCopy(): Promise<boolean> {
  const { open } = studio.getState();
  if (!open) return false;
  const title = titleOfCopy(open.design.title);
  change('Name the copy', { kind: 'set', field: 'title', value: title });
  return saveOnShelf(title);
}

async function saveTo(target: Handle, stamp: Stamp | null): Promise<boolean> {
  // What is seen is what is saved: a stroke that could still be dropped becomes a step first.
  endStroke();
  const { open } = studio.getState();
  if (!open) return false;
  const step = open.history.done.at(-1) ?? null;
  const { aside } = open;
  const saved = await host().call('design.save', { target, text: writeDesign(open.design), stamp });
  if (!saved.ok) return notSaved(saved.problem, target);
  markSaved(saved.value, step, aside);
  tell(`Saved as ${saved.value.fileName}.`);
  return true;
}

async function notSaved(problem: Problem, target: Handle): Promise<boolean> {
  if (problem.code !== 'changed-outside') {
    tellProblem(problem.sentence);
    return false;
  }
  const answer = await choose('This file was changed elsewhere', problem.sentence, [
    { value: 'copy', label: 'Keep mine as a copy' },
    { value: 'theirs', label: 'Take the other version, drop mine' },
    { value: 'wait', label: 'Not now' },
  ]);
  if (answer === 'copy') return saveCopy();
  if (answer === 'theirs') await openHandle(target);
  return false;
}
