/**
 * Short sentences for the person: what was saved, undone, or went wrong. Read aloud politely. They go by themselves,
 * but not from under the pointer or the focus; a problem goes as soon as something works.
 */
import { useEffect, useRef } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { StudioState } from '../store/state.ts';
import { studio } from '../store/studio.ts';
import { afterSuccess, type Notice, withNotice } from './notice-list.ts';
import { withShortNames } from './short-names.ts';

const notices = createStore<{ list: readonly Notice[] }>(() => ({ list: [] }));
let nextKey = 1;

/** How long they stay, in ms: news is glanced at, where it is short; a problem is read. */
const newsMs = 4_000;
/** For each letter: twice as long as quiet reading takes, of some 25 letters a second (value from memory). */
const letterMs = 80;
const problemMs = 20_000;

export function tell(text: string): void {
  show(text, false);
}

export function tellProblem(sentence: string): void {
  show(sentence, true);
}

function show(text: string, bad: boolean): void {
  const told = { key: nextKey++, text, bad, toldMs: performance.now() };
  notices.setState(({ list }) => ({ list: withNotice(list, told) }));
}

function putAway(key: number): void {
  notices.setState(({ list }) => ({ list: list.filter((each) => each.key !== key) }));
}

export function Notices() {
  const list = useStore(notices, (state) => state.list);
  useEffect(
    () =>
      studio.subscribe((state, before) => {
        if (hasWorked(before, state))
          notices.setState((shown) => ({ list: afterSuccess(shown.list, performance.now()) }));
      }),
    [],
  );
  return (
    <div className="notices" role="status" aria-live="polite">
      {list.map((notice) => (
        <Card key={notice.key} notice={notice} />
      ))}
    </div>
  );
}

function Card({ notice: { key, text, bad } }: { notice: Notice }) {
  const card = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const leave = () => {
      if (card.current?.matches(':hover, :focus-within')) timer = setTimeout(leave, newsMs);
      else putAway(key);
    };
    let timer = setTimeout(leave, Math.max(bad ? problemMs : newsMs, text.length * letterMs));
    return () => clearTimeout(timer);
  }, [key, bad, text]);
  const shown = withShortNames(text);
  return (
    <div ref={card} className={bad ? 'notice bad' : 'notice'}>
      <p title={shown === text ? undefined : text}>{shown}</p>
      <button type="button" className="plain" onClick={() => putAway(key)}>
        {bad ? 'I see' : 'All right'}
      </button>
    </div>
  );
}

/** Something was done, saved, or left behind between these two states. */
function hasWorked({ screen, open }: StudioState, after: StudioState): boolean {
  return (
    screen !== after.screen ||
    open?.opening !== after.open?.opening ||
    open?.history !== after.open?.history ||
    open?.savedAt !== after.open?.savedAt ||
    open?.layer !== after.open?.layer
  );
}
