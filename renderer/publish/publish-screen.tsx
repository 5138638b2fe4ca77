/**
 * Publish: the parts of the pattern at the left, its pages as they will be printed, and at the right how they are printed, what they
 * say, who publishes them, and the ways to take them away.
 */
import { useEffect, useRef, useState } from 'react';
import { type CanvasFaces, drawOnCanvas } from '../../shared/pattern/draw-on-canvas.ts';
import type { Page } from '../../shared/pattern/page.ts';
import { saveChartPng, savePattern } from '../flows/exporting.ts';
import { ask } from '../shell/dialogs.tsx';
import { useStudio } from '../store/use-studio.ts';
import { CopyPanel } from './copy-panel.tsx';
import { CoverPanel } from './cover-panel.tsx';
import { EditionsPanel } from './editions-panel.tsx';
import { FindingsPanel } from './findings-panel.tsx';
import { editImprint } from './imprint-dialog.tsx';
import { useImprint } from './imprint-state.ts';
import { keepPattern, type PatternKeeper } from './keep-pattern.ts';
import { PagesProgress } from './pages-progress.tsx';
import { savePapers } from './papers-dialog.tsx';
import { PartsPanel } from './parts-panel.tsx';
import { patternView, usePattern } from './pattern-view.ts';
import { saveForSale } from './sale-dialog.tsx';
import { TextsPanel } from './texts-panel.tsx';
import './publish.css';

export function PublishScreen() {
  const opening = useStudio((state) => state.open?.opening);
  return opening ? <Pattern key={opening} /> : null;
}

function Pattern() {
  const [keeper, setKeeper] = useState<PatternKeeper | null>(null);
  const problem = usePattern((view) => view.problem);
  useEffect(() => {
    const made = keepPattern();
    setKeeper(made);
    return () => made.forget();
  }, []);
  if (problem) return <p className="sheet fault">{problem}</p>;
  return (
    <div className="publish">
      <PartsPanel />
      <Pages />
      <PatternSide keeper={keeper} />
    </div>
  );
}

function Pages() {
  const pages = usePattern((view) => view.document?.pages);
  const isQuick = usePattern((view) => view.effort === 'quick');
  const isBusy = usePattern((view) => view.progress !== null);
  return (
    <ol className="pages" aria-label="Pages" aria-busy={isBusy}>
      {numbered(pages ?? []).map(({ page, number }) => (
        <li key={number}>
          <button
            type="button"
            data-page={number}
            aria-label={`Show page ${number} large: ${page.title}`}
            onClick={() => enlarge(page)}
          >
            <PagePreview page={page} pxPerMm={previewPxPerMm} />
          </button>
          <p className="quiet">
            {number} · {page.title}
            {isQuick && ' · quick plan'}
          </p>
        </li>
      ))}
    </ol>
  );
}

function PatternSide({ keeper }: { keeper: PatternKeeper | null }) {
  const columns = useStudio((state) => state.open?.design.columns);
  const rows = useStudio((state) => state.open?.design.rows);
  const pattern = usePattern((view) => view.document);
  const attachDesign = usePattern((view) => view.attachDesign);
  return (
    <aside aria-label="The pattern">
      <h2>The pattern</h2>
      {pattern && (
        <p>
          {pattern.pages.length === 1 ? '1 page' : `${pattern.pages.length} pages`} for {columns} cords and{' '}
          {rows} rows.
        </p>
      )}
      <button type="button" className="main" onClick={savePattern}>
        Pattern as PDF…
      </button>
      <button type="button" onClick={saveForSale}>
        Everything for selling…
      </button>
      <button type="button" onClick={saveChartPng}>
        Chart as PNG…
      </button>
      <button type="button" onClick={savePapers}>
        Papers for the hanging…
      </button>
      <PagesProgress keeper={keeper} />
      <FindingsPanel />
      <CopyPanel />
      <CoverPanel />
      <TextsPanel />
      <EditionsPanel />
      <ImprintLine />
      <label
        className="choice"
        title="Opening such a PDF in Larkrow opens the design. For you, not for buyers."
      >
        <input
          type="checkbox"
          checked={attachDesign}
          onChange={() => patternView.setState({ attachDesign: !attachDesign })}
        />
        With the design in the PDF
      </label>
    </aside>
  );
}

function ImprintLine() {
  const { name, workshop } = useImprint();
  const named = [name, workshop].filter((each) => each.trim() !== '').join(', ');
  return (
    <>
      <button type="button" onClick={editImprint}>
        Imprint…
      </button>
      <p className="hint one-line">{named || 'Nobody is named yet.'}</p>
    </>
  );
}

function numbered(pages: readonly Page[]): { page: Page; number: number }[] {
  return pages.map((page, i) => ({ page, number: i + 1 }));
}

/** The families that the studio's style sheet loads. */
const faces: CanvasFaces = {
  sans: { family: 'Noto Sans', weight: 400 },
  'sans-bold': { family: 'Noto Sans', weight: 600 },
  serif: { family: 'Noto Serif', weight: 400 },
  'serif-bold': { family: 'Noto Serif', weight: 600 },
  symbols: { family: 'Larkrow Symbols', weight: 400 },
};

const previewPxPerMm = 1.42;

async function enlarge(page: Page): Promise<void> {
  await ask<true>({
    label: page.title,
    wide: true,
    body: (answer) => (
      <div className="sheet large-page">
        <div className="answers">
          <h2 className="one-line">{page.title}</h2>
          <button type="button" data-first onClick={() => answer(true)}>
            Close
          </button>
        </div>
        <PagePreview page={page} pxPerMm={Math.min(4.4, 900 / page.widthMm)} />
      </div>
    ),
  });
}

/** Drawn only once it comes into sight: a pattern may have a hundred pages. */
function PagePreview({ page, pxPerMm }: { page: Page; pxPerMm: number }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    const watcher = new IntersectionObserver(
      (entries) => entries.some((each) => each.isIntersecting) && setSeen(true),
      {
        rootMargin: '400px',
      },
    );
    if (canvas.current) watcher.observe(canvas.current);
    return () => watcher.disconnect();
  }, []);
  useEffect(() => {
    if (!seen) return;
    let current = true;
    facesLoaded().then(() => {
      const context = canvas.current?.getContext('2d');
      if (!current || !canvas.current || !context) return;
      const scale = pxPerMm * Math.max(1, window.devicePixelRatio);
      canvas.current.width = page.widthMm * scale;
      canvas.current.height = page.heightMm * scale;
      drawOnCanvas(context, page, scale, faces);
    });
    return () => {
      current = false;
    };
  }, [page, seen, pxPerMm]);
  return (
    <canvas
      ref={canvas}
      role="img"
      aria-label={page.title}
      style={{ width: page.widthMm * pxPerMm, height: page.heightMm * pxPerMm }}
    />
  );
}

/** A canvas does not wait for fonts as text does, so they are asked for before a page is drawn. */
function facesLoaded(): Promise<unknown> {
  return Promise.all(
    Object.values(faces).map(({ family, weight }) => document.fonts.load(`${weight} 10px "${family}"`)),
  );
}
