/** What preflight finds, the weightiest first, with a way to where it is mended. */
import { useId } from 'react';
import type { Finding, Weight } from '../../../shared/pattern/preflight/finding.ts';
import { withShortNames } from '../../shell/short-names.ts';
import { usePattern } from '../pattern-view.ts';
import { goTo, wayName } from './finding-ways.ts';

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
  const id = useId();
  return (
    <li data-weight={weight}>
      <p id={id}>
        <strong>{weightNames[weight]}.</strong> {withShortNames(sentence)}{' '}
        <span className="quiet">{withShortNames(mend)}</span>
      </p>
      <button type="button" className="plain" aria-describedby={id} onClick={() => goTo(place)}>
        {wayName(place)}
      </button>
    </li>
  );
}
