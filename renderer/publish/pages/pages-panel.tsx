/** All pages as they will be printed, part by part. */
import { type ReactNode, useMemo } from 'react';
import type { PatternPart } from '../../../shared/design/pattern-schema.ts';
import type { Page } from '../../../shared/pattern/page/page.ts';
import { useToolbar } from '../../shell/use-toolbar.ts';
import { partNames } from '../parts/part-words.ts';
import { usePattern } from '../pattern-view.ts';
import { enlargePage } from './enlarge-page.tsx';
import { PagePreview } from './page-preview.tsx';

export function PagesPanel() {
  const pages = usePattern((view) => view.document?.pages) ?? none;
  const isBusy = usePattern((view) => view.progress !== null || view.isBehind);
  const problem = usePattern((view) => view.problem);
  const isThere = usePattern((view) => view.document !== null);
  const groups = useMemo(() => groupsOf(pages), [pages]);
  const oneStop = useToolbar<HTMLUListElement>();
  if (problem)
    return (
      <Instead>
        <span className="fault" role="alert">
          {problem}
        </span>
      </Instead>
    );
  if (!isThere) return <Instead>The first pages are being laid out…</Instead>;
  if (pages.length === 0)
    return <Instead>There is no page: tick at least the chart among the parts.</Instead>;
  return (
    <ul className="pages" aria-label="Pages" aria-busy={isBusy} aria-describedby="publish-keys" {...oneStop}>
      <li id="publish-keys" className="unseen">
        Left and right go from page to page, Enter shows one large.
      </li>
      {groups.map((group) => (
        <PartPages key={group.first.number} {...group} />
      ))}
    </ul>
  );
}

const none: readonly Page[] = [];

/** What stands where there are no pages. */
function Instead({ children }: { children: ReactNode }) {
  return (
    <div className="pages">
      <p className="sheet">{children}</p>
    </div>
  );
}

interface NumberedPage {
  readonly page: Page;
  /** From 1. */
  readonly number: number;
}

/** Pages of one part that follow each other. */
interface Group {
  readonly part: PatternPart | undefined;
  readonly first: NumberedPage;
  readonly others: readonly NumberedPage[];
}

function groupsOf(pages: readonly Page[]): readonly Group[] {
  const groups: { part: PatternPart | undefined; first: NumberedPage; others: NumberedPage[] }[] = [];
  for (const [at, page] of pages.entries()) {
    const numbered = { page, number: at + 1 };
    const last = groups.at(-1);
    if (last && last.part === page.part) last.others.push(numbered);
    else groups.push({ part: page.part, first: numbered, others: [] });
  }
  return groups;
}

function PartPages({ part, first, others }: Group) {
  const name = part ? partNames[part] : '';
  return (
    <li className="publish-group">
      <ol aria-label={`${name}: pages`} start={first.number}>
        <PageEntry {...first} heading={<h3>{name}</h3>} />
        {others.map((each) => (
          <PageEntry key={each.number} {...each} heading={<span />} />
        ))}
      </ol>
    </li>
  );
}

interface PageEntryProps extends NumberedPage {
  readonly heading: ReactNode;
}

function PageEntry({ page, number, heading }: PageEntryProps) {
  const isQuick = usePattern((view) => view.effort === 'quick');
  return (
    <li className="publish-page">
      {heading}
      <button
        type="button"
        data-page={number}
        aria-label={`Show page ${number} large: ${page.title}`}
        onClick={() => enlargePage(number)}
      >
        <PagePreview page={page} pxPerMm={previewPxPerMm} />
      </button>
      <p className="quiet">
        {number} · {page.title}
        {isQuick && ' · quick plan'}
      </p>
    </li>
  );
}

/** Two pages stand side by side in a window of 1280 px. */
const previewPxPerMm = 1.32;
