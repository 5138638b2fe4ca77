/** What preflight finds, the weightiest first, with a way to where it is mended. */
import type { Finding, Place, Setting, Weight } from '../../shared/pattern/preflight/finding.ts';
import { goToCell } from '../draw/go-to-cell.ts';
import { changeHanging } from '../draw/hanging-dialog.tsx';
import { type Leaf, showLeaf } from '../plan/leaves/leaves.ts';
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
      <button type="button" className="plain" onClick={() => goTo(place)}>
        Go there
      </button>
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
    case 'text':
      unfold('texts', `[data-text="${place.text}"] textarea`)?.focus();
      return;
    case 'setting':
      settingWays[place.setting]();
  }
}

const settingWays: Readonly<Record<Setting, () => void>> = {
  imprint: () => void editImprint(),
  designer: changeHanging,
  title: changeHanging,
  gauge: () => showPlan('swatches'),
  dowel: () => showPlan('sizes'),
  pins: () => showPlan('chart'),
  yarns: () => studio.setState({ screen: 'draw' }),
  parts: () => focusIn('.publish-parts'),
  copy: () => unfold('copy')?.querySelector('summary')?.focus(),
  cover: () => unfold('cover')?.querySelector('button')?.focus(),
  editions: () => unfold('editions')?.querySelector('button')?.focus(),
};

function showPlan(leaf: Leaf): void {
  studio.setState({ screen: 'plan' });
  showLeaf(leaf);
}

function focusIn(selector: string): void {
  document.querySelector<HTMLElement>(`${selector} input`)?.focus();
}
