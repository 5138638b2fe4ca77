import { afterLastRowWords } from './after-last-row-words.ts';

/** What is still to be done when the last knot is tied, as a list. */
export function AfterLastRow({ looseEnds }: { looseEnds: number }) {
  return (
    <ol className="after-last-row">
      {afterLastRowWords(looseEnds).map((words) => (
        <li key={words}>{words}</li>
      ))}
    </ol>
  );
}
