/** Which notices stand at one moment: few, no sentence twice, and no problem that is over. */
export interface Notice {
  readonly key: number;
  readonly text: string;
  /** A problem. Else it is news. */
  readonly bad: boolean;
  /** On the page's clock, in ms. */
  readonly toldMs: number;
}

/** More would hide the chart, and nobody reads them. */
const shownAtMost = 2;

/** What is told while a thing is done belongs to it, even where the thing succeeds a moment later. */
const sameDeedMs = 500;

/** News replaces older news, and a sentence that stands already is told anew; the latest come last. */
export function withNotice(list: readonly Notice[], told: Notice): readonly Notice[] {
  return [...list.filter(({ bad, text }) => bad && text !== told.text), told].slice(-shownAtMost);
}

/** After something has worked: problems from before are over. */
export function afterSuccess(list: readonly Notice[], nowMs: number): readonly Notice[] {
  const left = list.filter(({ bad, toldMs }) => !bad || nowMs - toldMs < sameDeedMs);
  return left.length === list.length ? list : left;
}
