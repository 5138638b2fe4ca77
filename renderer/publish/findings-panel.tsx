/** What preflight finds, the weightiest first, with a way to where it is mended. */
import type { Finding, Place, Weight } from '../../shared/pattern/preflight/finding.ts';
import { goToCell } from '../draw/go-to-cell.ts';
import { showLeaf } from '../plan/leaves/leaves.ts';
import { studio } from '../store/studio.ts';
import { editImprint } from './imprint-dialog.tsx';
import { usePattern } from './pattern-view.ts';
import { goToPage } from './show-page.ts';
import { unfold } from './unfold.ts';

export function FindingsPanel() {
  const findings = usePattern((view) => view.findings);
  if (!findings) return null;
  return (
    <details open={findings.some(({ weight }) => weight !== 'note')}>
      <summary>Before it is sold{findings.length > 0 ? ` (${findings.length})` : ''}</summary>
      {findings.length === 0 ? (
        <p>Nothing was found that would disappoint a buyer.</p>
      ) : (
        <ul className="publish-findings">
          {findings.map((finding) => (
            <FindingEntry key={`${finding.kind} ${finding.sentence}`} {...finding} />
          ))}
        </ul>
      )}
    </details>
  );
}

const weightNames: Readonly<Record<Weight, string>> = { fault: 'Fault', doubt: 'Doubt', note: 'Note' };

function FindingEntry({ weight, sentence, mend, place }: Finding) {
  return (
    <li data-weight={weight}>
      <p>
        <strong>{weightNames[weight]}.</strong> {sentence} <span className="quiet">{mend}</span>
      </p>
      {place && (
        <button type="button" className="plain" onClick={() => goTo(place)}>
          Go there
        </button>
      )}
    </li>
  );
}

function goTo(place: Place): void {
  switch (place.on) {
    case 'page':
      goToPage(place.page);
      return;
    case 'cell':
      studio.setState({ screen: 'draw' });
      requestAnimationFrame(() => goToCell({ row: place.row - 1, column: place.cord - 1 }));
      return;
    case 'setting':
      settingWays[place.setting]();
  }
}

const settingWays: Readonly<Record<Extract<Place, { on: 'setting' }>['setting'], () => void>> = {
  imprint: () => void editImprint(),
  designer: () => void editImprint(),
  gauge: () => {
    studio.setState({ screen: 'plan' });
    showLeaf('swatches');
  },
  title: () => focusIn('.publish-parts'),
  parts: () => focusIn('.publish-parts'),
  terms: () => unfold('texts', '[data-text="terms"] textarea')?.focus(),
  copy: () => unfold('copy')?.querySelector('summary')?.focus(),
};

function focusIn(selector: string): void {
  document.querySelector<HTMLElement>(`${selector} input`)?.focus();
}
