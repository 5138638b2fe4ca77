/** Short sentences for the person: what was saved, undone, or went wrong. Read aloud politely. */
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';

interface Notice {
  readonly key: number;
  readonly text: string;
  readonly bad: boolean;
}

const notices = createStore<{ list: readonly Notice[] }>(() => ({ list: [] }));
let nextKey = 1;

/** Good news goes away by itself; a problem stays until it is read and put away. */
export function tell(text: string): void {
  const key = show(text, false);
  setTimeout(() => putAway(key), 4000);
}

export function tellProblem(sentence: string): void {
  show(sentence, true);
}

function show(text: string, bad: boolean): number {
  const key = nextKey++;
  notices.setState(({ list }) => ({
    // News replaces older news; a problem stays until it was read.
    list: [...list.filter((each) => each.bad && each.text !== text), { key, text, bad }],
  }));
  return key;
}

function putAway(key: number): void {
  notices.setState(({ list }) => ({ list: list.filter((each) => each.key !== key) }));
}

export function Notices() {
  const list = useStore(notices, (state) => state.list);
  return (
    <div className="notices" role="status" aria-live="polite">
      {list.map(({ key, text, bad }) => (
        <div key={key} className={bad ? 'notice bad' : 'notice'}>
          <p>{text}</p>
          <button type="button" className="plain" onClick={() => putAway(key)}>
            {bad ? 'I see' : 'Close'}
          </button>
        </div>
      ))}
    </div>
  );
}
