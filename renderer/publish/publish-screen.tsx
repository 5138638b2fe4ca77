/** Publish: the pattern's pages as they will be printed, and the ways to take them away. */
import { useEffect, useMemo, useRef, useState } from 'react';
import { materialsOf } from '../../shared/materials/tally.ts';
import { type CanvasFaces, drawOnCanvas } from '../../shared/pattern/draw-on-canvas.ts';
import { layOutPattern } from '../../shared/pattern/lay-out-pattern.ts';
import type { Page, PatternDocument } from '../../shared/pattern/page.ts';
import { planStrands } from '../../shared/tying/plan-strands.ts';
import { saveChartPng, savePattern } from '../flows/exporting.ts';
import { set } from '../settings/settings.tsx';
import { ask } from '../shell/dialogs.tsx';
import { Choices } from '../shell/fields.tsx';
import type { OpenDesign } from '../store/state.ts';
import { useStudio } from '../store/use-studio.ts';
import './publish.css';

export function PublishScreen() {
  const open = useStudio((state) => state.open);
  return open ? <Pattern open={open} /> : null;
}

function Pattern({ open }: { open: OpenDesign }) {
  const { paper, units } = useStudio((state) => state.settings);
  const pattern = useMemo(() => patternOf(open, paper, units), [open, paper, units]);
  if (typeof pattern === 'string') return <p className="sheet fault">{pattern}</p>;
  return (
    <div className="publish">
      <ol className="pages" aria-label="Pages">
        {numbered(pattern.pages).map(({ page, number }) => (
          <li key={number}>
            <button
              type="button"
              aria-label={`Show page ${number} large: ${page.title}`}
              onClick={() => enlarge(page)}
            >
              <PagePreview page={page} pxPerMm={previewPxPerMm} />
            </button>
            <p className="quiet">
              {number} · {page.title}
            </p>
          </li>
        ))}
      </ol>
      <aside>
        <h2>The pattern</h2>
        <p>
          {pattern.pages.length} pages for {open.design.columns} cords and {open.design.rows} rows.
        </p>
        <Choices
          label="Paper"
          value={paper}
          options={[
            { value: 'a4', label: 'A4' },
            { value: 'letter', label: 'Letter' },
          ]}
          onChange={(next) => set({ paper: next })}
        />
        <Choices
          label="Units"
          value={units}
          options={[
            { value: 'metric', label: 'Metric' },
            { value: 'us', label: 'US' },
            { value: 'both', label: 'Both' },
          ]}
          onChange={(next) => set({ units: next })}
        />
        {pattern.notices.map((notice) => (
          <p key={notice} className="fault">
            {notice}
          </p>
        ))}
        <button type="button" className="main" onClick={savePattern}>
          Pattern as PDF…
        </button>
        <button type="button" onClick={saveChartPng}>
          Chart as PNG…
        </button>
      </aside>
    </div>
  );
}

function patternOf(
  { design, chart }: OpenDesign,
  paper: 'a4' | 'letter',
  units: 'metric' | 'us' | 'both',
): PatternDocument | string {
  const plan = planStrands(design, chart);
  if (!plan.ok) return plan.problem.sentence;
  const materials = materialsOf(design, chart, plan.value);
  return layOutPattern({ design, chart, plan: plan.value, materials, paper, units });
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

const previewPxPerMm = 1.9;

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
