/** One yarn of the stash in its list. */
import { formatMass } from '../../../../shared/units/mass.ts';
import { formatYarnLength } from '../../../../shared/units/yarn-length.ts';
import type { StashYarn } from '../../../../shared/yarn/stash.ts';
import { useStudio } from '../../../store/use-studio.ts';
import { Ball } from '../ball.tsx';
import { skeinMetres } from '../skein.ts';
import { skeinsInWords } from './skeins-in-words.ts';

interface StashEntryProps {
  readonly yarn: StashYarn;
  readonly isPicked: boolean;
  readonly pick: () => void;
  readonly change: () => void;
  readonly remove: () => void;
}

export function StashEntry({ yarn, isPicked, pick, change, remove }: StashEntryProps) {
  const units = useStudio((state) => state.settings.units);
  const length = formatYarnLength(skeinMetres(yarn) * 1000, units, { spare: true });
  return (
    <li>
      <label className="pick">
        <input type="checkbox" checked={isPicked} onChange={pick} />
        <Ball color={yarn.color} symbol={null} />
        <span className="words">
          <span className="one-line name" title={yarn.name}>
            {yarn.name}
          </span>
          <span className="one-line quiet small" title={yarn.notes}>
            {skeinsInWords(yarn.ownedSkeins)} · {length} in {formatMass(yarn.skeinG, units)}
            {yarn.notes ? ` · ${yarn.notes}` : ''}
          </span>
        </span>
      </label>
      <button type="button" aria-label={`Change ${yarn.name}`} onClick={change}>
        Change…
      </button>
      <button type="button" aria-label={`Remove ${yarn.name}`} onClick={remove}>
        Remove
      </button>
    </li>
  );
}
