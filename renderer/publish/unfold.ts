/** Opens one of the foldable parts of the column at the right, and brings into sight what is sought in it. */
export type Foldable = 'copy' | 'cover' | 'editions' | 'texts';

/** `sought` is a selector; absent, it is the part itself. Gives what was found. */
export function unfold(name: Foldable, sought?: string): HTMLElement | null {
  const column = document.querySelector<HTMLElement>('.publish aside');
  const details = column?.querySelector<HTMLDetailsElement>(`details[data-fold="${name}"]`);
  if (!column || !details) return null;
  details.open = true;
  const found = sought === undefined ? details : details.querySelector<HTMLElement>(sought);
  // Only the column is moved: where all stands one below the other, the page that was asked for stays in sight.
  if (found)
    column.scrollBy(0, found.getBoundingClientRect().top - column.getBoundingClientRect().top - roomPx);
  return found;
}

const roomPx = 12;
