/** A page large enough to be read; arrows and buttons lead to the pages beside it. */
import { useEffect, useState } from 'react';
import type { Page } from '../../shared/pattern/page.ts';
import { ask } from '../shell/dialogs.tsx';
import { PagePreview } from './page-preview.tsx';

/** `number` counts from 1. */
export async function enlargePage(pages: readonly Page[], number: number): Promise<void> {
  await ask<true>({
    label: 'A page, large',
    wide: true,
    body: (answer) => <LargePage pages={pages} first={number} close={() => answer(true)} />,
  });
}

interface LargePageProps {
  readonly pages: readonly Page[];
  readonly first: number;
  readonly close: () => void;
}

const widestPx = 900;
const mostPxPerMm = 4.4;

function LargePage({ pages, first, close }: LargePageProps) {
  const [number, setNumber] = useState(first);
  const page = pages[number - 1];
  useEffect(() => {
    const onKey = ({ key }: KeyboardEvent) => {
      const by = { ArrowLeft: -1, ArrowRight: 1 }[key];
      if (by !== undefined) setNumber((now) => Math.max(1, Math.min(pages.length, now + by)));
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [pages.length]);
  if (!page) return null;
  const step = (label: string, to: number) => {
    const isThere = to >= 1 && to <= pages.length;
    return (
      <button type="button" aria-disabled={!isThere} onClick={() => isThere && setNumber(to)}>
        {label}
      </button>
    );
  };
  return (
    <div className="sheet large-page">
      <div className="answers">
        <h2 className="one-line" aria-live="polite">
          {number} · {page.title}
        </h2>
        {step('Page before', number - 1)}
        {step('Next page', number + 1)}
        <button type="button" data-first onClick={close}>
          Close
        </button>
      </div>
      <PagePreview page={page} pxPerMm={Math.min(mostPxPerMm, widestPx / page.widthMm)} />
    </div>
  );
}
