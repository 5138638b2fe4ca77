/** A page large enough to be read. Buttons and keys lead to the other pages; where it ends, the focus is on the page seen last. */
import { useEffect, useRef, useState } from 'react';
import { ask } from '../../shell/dialogs.tsx';
import { patternView, usePattern } from '../pattern-view.ts';
import { PagePreview } from './page-preview.tsx';
import { goToPage } from './show-page.ts';

/** `number` counts from 1. */
export async function enlargePage(number: number): Promise<void> {
  let seen = number;
  await ask<never>({
    label: 'A page, large',
    wide: true,
    leave: 'Close',
    body: () => <LargePage first={number} onSeen={(now) => (seen = now)} />,
  });
  // The dialog gives the focus back to where it came from, and that is done by the next frame.
  requestAnimationFrame(() => goToPage(seen));
}

interface LargePageProps {
  readonly first: number;
  readonly onSeen: (number: number) => void;
}

const widestPx = 900;
const mostPxPerMm = 4.4;

/** From the number of the page that is seen to another, among so many. Up and down scroll the page. */
const ways: Readonly<Record<string, (number: number, count: number) => number>> = {
  ArrowLeft: (number) => number - 1,
  PageUp: (number) => number - 1,
  ArrowRight: (number) => number + 1,
  PageDown: (number) => number + 1,
  Home: () => 1,
  End: (_, count) => count,
};

function LargePage({ first, onSeen }: LargePageProps) {
  // Pages may be laid out anew while one is looked at.
  const pages = usePattern((view) => view.document?.pages) ?? [];
  const [wanted, setNumber] = useState(first);
  const sheet = useRef<HTMLDivElement>(null);
  const number = Math.max(1, Math.min(pages.length, wanted));
  const page = pages[number - 1];
  useEffect(() => {
    onSeen(number);
    sheet.current?.closest('dialog')?.scrollTo(0, 0);
  }, [number, onSeen]);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const way = ways[event.key];
      if (!way || event.ctrlKey || event.altKey || event.metaKey) return;
      event.preventDefault();
      const count = patternView.getState().document?.pages.length ?? 0;
      setNumber((now) => Math.max(1, Math.min(count, way(now, count))));
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
  if (!page) return null;
  const step = (label: string, to: number, isFirst: boolean) => {
    const isThere = to >= 1 && to <= pages.length;
    return (
      <button
        type="button"
        data-first={isFirst || undefined}
        aria-disabled={!isThere}
        onClick={() => isThere && setNumber(to)}
      >
        {label}
      </button>
    );
  };
  const name = `Page ${number} of ${pages.length} · ${page.title}`;
  return (
    <div ref={sheet} className="sheet large-page">
      <h2 aria-live="polite">{name}</h2>
      <div className="answers">
        {step('Page before', number - 1, false)}
        {step('Next page', number + 1, true)}
      </div>
      <PagePreview page={page} pxPerMm={Math.min(mostPxPerMm, widestPx / page.widthMm)} label={name} />
    </div>
  );
}
