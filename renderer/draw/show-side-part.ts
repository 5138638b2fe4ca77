/** Unfolds a part of the right column, brings it into sight and gives it the focus. */
export function showSidePart(part: string): void {
  const details = document.querySelector<HTMLDetailsElement>(`.side-part[data-part="${part}"]`);
  if (!details) return;
  details.open = true;
  details.scrollIntoView({ block: 'nearest' });
  details.querySelector('summary')?.focus();
}
