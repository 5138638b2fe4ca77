/** Opening and leaving designs. Nothing that is unsaved is left without asking. */
import type { Handle } from '../../shared/bridge.ts';
import { choose } from '../shell/dialogs.tsx';
import { closeDesign, isUnsaved, studio } from '../store/studio.ts';
import { openHandle } from './open-handle.ts';
import { isPatternName, openInPattern } from './open-in-pattern.ts';
import { fileToOpen } from './places.ts';
import { save } from './saving.ts';

/** True where the open design may be left: it is saved, was saved just now, or the person lets it go. */
export async function mayLeave(): Promise<boolean> {
  const { open } = studio.getState();
  if (!isUnsaved(open)) return true;
  const title = open?.design.title ?? '';
  const answer = await choose('Save your work first?', `“${title}” has changes that are not saved.`, [
    { value: 'save', label: 'Save' },
    { value: 'leave', label: 'Leave without saving' },
    { value: 'stay', label: 'Go on drawing' },
  ]);
  if (answer === 'save') return save();
  return answer === 'leave';
}

export async function openFromPlace(): Promise<void> {
  const place = await fileToOpen('design');
  if (!place) return;
  if (!isPatternName(place.name)) return openByHandle(place.handle);
  if (await mayLeave()) await openInPattern(place.handle, place.name);
}

/** Opens a design of the shelf, the recent list or the chooser; the design open now is kept where this fails. */
export async function openByHandle(handle: Handle): Promise<void> {
  if (studio.getState().open?.home?.design === handle) {
    studio.setState({ screen: 'draw' });
    return;
  }
  if (await mayLeave()) await openHandle(handle);
}

export async function leaveDesign(): Promise<void> {
  if (await mayLeave()) closeDesign();
}
