/**
 * A field that is left by pressing something else keeps its text before that thing acts, but not before the press has landed: what
 * the text changes on the screen would move the thing away from under the pointer, and the press would be lost.
 */

const ends = ['pointerup', 'pointercancel'] as const;
let isPressed = false;

/** Until it is forgotten, it is known whether anything on the page is pressed. */
export function watchPresses(): () => void {
  const starts = () => {
    isPressed = true;
  };
  const stops = () => {
    isPressed = false;
  };
  window.addEventListener('pointerdown', starts, true);
  for (const end of ends) window.addEventListener(end, stops, true);
  return () => {
    window.removeEventListener('pointerdown', starts, true);
    for (const end of ends) window.removeEventListener(end, stops, true);
    stops();
  };
}

/** Acts at once where nothing is pressed; else when the press ends, before whatever was pressed is told of it. */
export function whenPressEnds(act: () => void): void {
  if (!isPressed) {
    act();
    return;
  }
  let isDone = false;
  const once = () => {
    if (isDone) return;
    isDone = true;
    window.removeEventListener('mouseup', once, true);
    for (const end of ends) window.removeEventListener(end, soon, true);
    act();
  };
  // Not every press ends with the button coming up over the page. Where it does, that comes before any timer.
  const soon = () => setTimeout(once);
  // By now it is settled what the click will be on, so that it may move. The click itself would be too late: a box is
  // ticked before the click is told of, and drawing it then, with what it showed so far, would take the tick back.
  window.addEventListener('mouseup', once, true);
  for (const end of ends) window.addEventListener(end, soon, true);
}
