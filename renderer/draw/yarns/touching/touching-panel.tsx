/**
 * What touches what: pairs of touching yarns that can't be told apart, by whose eyes or print, with the places on the
 * chart. It follows the picture while that is drawn.
 */
import { useMemo, useState } from 'react';
import { yarnIdOf } from '../../../../shared/design/codes.ts';
import type { Yarn } from '../../../../shared/design/schema.ts';
import type { AlikePair } from '../../../../shared/yarn/alike-pairs.ts';
import { type Sight, seenAs, sights } from '../../../../shared/yarn/sight.ts';
import { useFindings } from '../../../planning/findings.ts';
import { changeViews } from '../../../store/studio.ts';
import { useStudio } from '../../../store/use-studio.ts';
import { togglePair, useMarkedPair } from '../../cost/marking.ts';
import { Ball } from '../ball.tsx';
import { pairsBySight } from './pairs-by-sight.ts';

const sightNames: Record<Sight, string> = {
  normal: 'In normal sight',
  protan: 'Without red cones',
  deutan: 'Without green cones',
  tritan: 'Without blue cones',
  grey: 'In greys, as in print',
};

export function TouchingPanel() {
  const pairs = useFindings((found) => found.pairs);
  const yarns = useStudio((state) => state.open?.design.yarns);
  const shownSight = useStudio((state) => state.views.sight);
  const [chosen, setChosen] = useState<Sight | null>(null);
  const bySight = useMemo(() => pairsBySight(pairs ?? []), [pairs]);
  if (!pairs || !yarns) return <p className="quiet">Looking…</p>;
  // Until one is chosen, the first that has any pairs is listed.
  const sight = chosen ?? sights.find((each) => bySight.get(each)!.length > 0) ?? 'normal';
  const listed = bySight.get(sight)!;
  const isShownSo = shownSight === sight;
  const choose = (next: Sight) => {
    setChosen(next);
    if (isShownSo && sight !== 'normal') changeViews({ sight: next });
  };
  return (
    <div className="touching">
      <p className="quiet small">Yarns side by side that can’t be told apart:</p>
      <div className="sights">
        {sights.map((each) => (
          <button
            type="button"
            key={each}
            className="plain"
            aria-pressed={each === sight}
            onClick={() => choose(each)}
          >
            {sightNames[each]}
            <b>{countInWords(bySight.get(each)!.length)}</b>
          </button>
        ))}
      </div>
      {listed.length > 0 && (
        <ul aria-label={`Alike ${sightNames[sight].toLowerCase()}`}>
          {listed.map((pair) => (
            <PairEntry key={`${pair.a} ${pair.b}`} pair={pair} sight={sight} yarns={yarns} />
          ))}
        </ul>
      )}
      {sight !== 'normal' && (
        <label className="choice">
          <input
            type="checkbox"
            checked={isShownSo}
            onChange={() => changeViews({ sight: isShownSo ? 'normal' : sight })}
          />
          Show the chart so
        </label>
      )}
    </div>
  );
}

interface PairEntryProps {
  readonly pair: AlikePair;
  readonly sight: Sight;
  readonly yarns: readonly Yarn[];
}

/** The list of yarns may be newer than the pairs: then a yarn is gone, and so will be the pair in a moment. */
function PairEntry({ pair, sight, yarns }: PairEntryProps) {
  const marked = useMarkedPair();
  const [a, b] = [pair.a, pair.b].map((code) => yarns.find(({ id }) => id === yarnIdOf(code)));
  if (!a || !b) return null;
  const isShown = marked?.a === pair.a && marked.b === pair.b;
  return (
    <li>
      <Ball color={seenAs(sight, a.color)} symbol={null} />
      <Ball color={seenAs(sight, b.color)} symbol={null} />
      <span className="words small">
        <span className="one-line" title={a.name}>
          {a.name}
        </span>
        <span className="one-line" title={b.name}>
          {b.name}
        </span>
        <span className="quiet">
          {pair.count === 1 ? '1 place' : `${pair.count.toLocaleString('en')} places`}
        </span>
      </span>
      <button
        type="button"
        className="small"
        aria-pressed={isShown}
        aria-label={`Show where ${a.name} and ${b.name} touch`}
        onClick={() => togglePair(pair)}
      >
        Show
      </button>
    </li>
  );
}

function countInWords(count: number): string {
  return count === 0 ? 'none' : count === 1 ? '1 pair' : `${count} pairs`;
}
