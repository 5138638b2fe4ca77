/** Brings a page into sight, counted from 1. */
export function showPage(number: number): void {
  pageButton(number)?.closest('li')?.scrollIntoView({ block: 'start' });
}

/** Brings it into sight, and the focus to it. */
export function goToPage(number: number): void {
  showPage(number);
  pageButton(number)?.focus({ preventScroll: true });
}

function pageButton(number: number): HTMLElement | null {
  return document.querySelector(`.publish .pages [data-page="${number}"]`);
}
