/**
 * Publish: the parts of the pattern at the left, its pages as they will be printed, and at the right how they are printed, what they
 * say, who publishes them, and the ways to take them away.
 */
import { useEffect, useState } from 'react';
import { counted } from '../../shared/units/counted.ts';
import { saveChartPng, savePattern } from '../flows/exporting.ts';
import { handleCommands } from '../shell/command-bus.ts';
import { withShortNames } from '../shell/short-names.ts';
import { useStudio } from '../store/use-studio.ts';
import { CopyPanel } from './copy-panel.tsx';
import { CoverPanel } from './cover/cover-panel.tsx';
import { EditionsPanel } from './editions/editions-panel.tsx';
import { FindingsPanel } from './findings/findings-panel.tsx';
import { editImprint } from './imprint/imprint-dialog.tsx';
import { useImprint } from './imprint/imprint-state.ts';
import { keepPattern, type PatternKeeper } from './keep-pattern.ts';
import { PagesPanel } from './pages/pages-panel.tsx';
import { PagesProgress } from './pages/pages-progress.tsx';
import { PartsPanel } from './parts/parts-panel.tsx';
import { patternView, usePattern } from './pattern-view.ts';
import { publishCommands } from './publish-commands.ts';
import { savePapers } from './sale/papers-dialog.tsx';
import { saveForSale } from './sale/sale-dialog.tsx';
import { TextsPanel } from './texts/texts-panel.tsx';
import './publish.css';

export function PublishScreen() {
  const opening = useStudio((state) => state.open?.opening);
  return opening ? <Pattern key={opening} /> : null;
}

function Pattern() {
  const [keeper, setKeeper] = useState<PatternKeeper | null>(null);
  useEffect(() => {
    const made = keepPattern();
    setKeeper(made);
    const forget = handleCommands(publishCommands(made));
    return () => {
      forget();
      made.forget();
    };
  }, []);
  return (
    <div className="publish">
      <PartsPanel />
      <PagesPanel />
      <PatternSide keeper={keeper} />
    </div>
  );
}

function PatternSide({ keeper }: { keeper: PatternKeeper | null }) {
  const columns = useStudio((state) => state.open?.design.columns);
  const rows = useStudio((state) => state.open?.design.rows);
  const pattern = usePattern((view) => view.document);
  const isEmpty = pattern?.pages.length === 0;
  const attachDesign = usePattern((view) => view.attachDesign);
  return (
    <aside aria-label="The pattern">
      <h2>The pattern</h2>
      {pattern && (
        <p>
          {counted(pattern.pages.length, 'page')} for {counted(columns ?? 0, 'cord')} and{' '}
          {counted(rows ?? 0, 'row')}.
        </p>
      )}
      <button type="button" className="main" aria-disabled={isEmpty} onClick={savePattern}>
        Pattern as PDF…
      </button>
      <button type="button" aria-disabled={isEmpty} onClick={saveForSale}>
        Everything for selling…
      </button>
      <button type="button" onClick={saveChartPng}>
        Chart as PNG…
      </button>
      <button type="button" onClick={savePapers}>
        Papers for the hanging…
      </button>
      <PagesProgress keeper={keeper} />
      <ImprintLine />
      <FindingsPanel />
      <CopyPanel />
      <CoverPanel />
      <TextsPanel />
      <EditionsPanel />
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
  const { name, workshop, contact } = useImprint();
  const designer = useStudio((state) => state.open?.design.designer.trim());
  const named = [name, workshop].filter((each) => each.trim() !== '').join(', ');
  const nobody = designer
    ? withShortNames(`Nobody yet: only “${designer}” is named, as this hanging’s designer.`)
    : 'Nobody is named yet.';
  const unreached = contact.every((line) => line.trim() === '');
  return (
    <>
      <button type="button" onClick={editImprint}>
        Imprint…
      </button>
      <p className="quiet imprint-line two-lines" title={named}>
        {named ? `${named}${unreached ? ', without a contact' : ''}` : nobody}
      </p>
    </>
  );
}
