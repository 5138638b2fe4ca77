/** Moves the list of the tying order, and nothing around it. Rows count from 1. */
/** Brings a row to the top of what is seen, or the next one that is listed, and gives it the focus. */
export function showRow(row: number): void {
  const found = rowElement(row);
  if (!found) return;
  bring(found, 0);
  found.querySelector<HTMLElement>('h3')?.focus({ preventScroll: true });
}

/** Brings a row into sight, where it is not. */
export function revealRow(row: number): void {
  const found = rowElement(row);
  const { top = 0, bottom = 0 } = found?.closest('.plan-leaf')?.getBoundingClientRect() ?? {};
  const place = found?.getBoundingClientRect();
  if (!found || !place || (place.top >= top + toolsPx() && place.bottom <= bottom)) return;
  bring(found, (bottom - top) / 4);
}

/** The row, the next one that is listed, or the last. */
function rowElement(row: number): HTMLElement | undefined {
  const all = [...document.querySelectorAll<HTMLElement>('.order-rows > li')];
  return all.find((each) => Number(each.dataset.row) >= row) ?? all.at(-1);
}

/** For how long rows above one that was gone to may find their height. */
const settlesMs = 1500;
let settling: AbortController | null = null;

/** Keeps the row in its place while the steps of those around it come, unless the person moves on. */
function bring(row: HTMLElement, belowPx: number): void {
  settling?.abort();
  scrollTo(row, belowPx);
  const ends = new AbortController();
  settling = ends;
  const watcher = new ResizeObserver(() => scrollTo(row, belowPx));
  watcher.observe(row.parentElement!);
  ends.signal.addEventListener('abort', () => watcher.disconnect());
  for (const moves of ['wheel', 'pointerdown', 'keydown'])
    window.addEventListener(moves, () => ends.abort(), { signal: ends.signal, passive: true });
  setTimeout(() => ends.abort(), settlesMs);
}

/** Moves only the leaf: the studio around it stays. `belowPx`: how far below the tools the row comes. */
function scrollTo(row: HTMLElement, belowPx: number): void {
  const leaf = row.closest('.plan-leaf');
  if (!leaf) return;
  leaf.scrollTop += row.getBoundingClientRect().top - leaf.getBoundingClientRect().top - toolsPx() - belowPx;
}

/** Height of the tools above the list, which stay in sight. */
function toolsPx(): number {
  return document.querySelector<HTMLElement>('.order-tools')?.offsetHeight ?? 0;
}
