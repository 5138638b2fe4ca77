/** One yarn's bundles: how many pieces of which length, their numbers, where they come in, and whether they are cut. */
import type { Bundle } from '../../../shared/materials/bundles/bundles.ts';
import { counted } from '../../../shared/units/counted.ts';
import { formatCutLength } from '../../../shared/units/cut-length.ts';
import { formatYarnLength } from '../../../shared/units/yarn-length.ts';
import { Ball } from '../../draw/yarns/ball.tsx';
import { useStudio } from '../../store/use-studio.ts';
import { tickBundle } from './bundle-deeds.ts';
import { cutWords, numbersWords, rowsWords } from './bundle-words.ts';

export interface CutBundle {
  readonly bundle: Bundle;
  /** Pieces of its yarn and length that are cut; as many as it has, or more: it is cut. */
  readonly cut: number;
}

interface YarnBundlesProps {
  readonly bundles: readonly CutBundle[];
  /** False while the cut list may still change. */
  readonly mayTick: boolean;
}

export function YarnBundles({ bundles, mayTick }: YarnBundlesProps) {
  const open = useStudio((state) => state.open);
  const units = useStudio((state) => state.settings.units);
  const yarn = open?.design.yarns.find(({ id }) => id === bundles[0]?.bundle.yarn);
  // A yarn may be gone while the plan without it is still being made.
  if (!open || !yarn) return null;
  const pieces = bundles.reduce((sum, { bundle }) => sum + bundle.pieces.length, 0);
  const totalMm = bundles.reduce((sum, { bundle }) => sum + bundle.totalMm, 0);
  return (
    <section className="yarn-bundles" aria-label={yarn.name}>
      <h3>
        <Ball color={yarn.color} symbol={yarn.symbol} />
        <span className="two-lines" title={yarn.name}>
          {yarn.name}
        </span>
        <span className="quiet small bundles-sum">
          {counted(pieces, 'piece')}, {formatYarnLength(totalMm, units, { enough: true })}
        </span>
      </h3>
      <table className="figures">
        <caption className="unseen">Bundles of {yarn.name}</caption>
        <thead>
          <tr>
            <th scope="col">Cut</th>
            <th scope="col">Pieces</th>
            <th scope="col">Length each</th>
            <th scope="col">Numbers</th>
            <th scope="col">Come in at</th>
          </tr>
        </thead>
        <tbody>
          {bundles.map(({ bundle, cut }) => {
            const isCut = cut >= bundle.pieces.length;
            const length = formatCutLength(bundle.cutMm, units);
            return (
              <tr key={bundle.cutMm} className={isCut ? 'is-cut' : ''}>
                <td>
                  <label className="tick">
                    <input
                      type="checkbox"
                      checked={isCut}
                      disabled={!mayTick}
                      aria-label={`${counted(bundle.pieces.length, 'piece')} of ${yarn.name}, ${length}: cut`}
                      onChange={({ target }) => tickBundle(bundle, target.checked)}
                    />
                  </label>
                </td>
                <td>
                  {bundle.pieces.length.toLocaleString('en')}
                  {mayTick && cut > 0 && cut !== bundle.pieces.length && (
                    <span className="quiet small cut-otherwise">{cutWords(cut, bundle)}</span>
                  )}
                </td>
                <td>{length}</td>
                <td>
                  <Numbers words={numbersWords(bundle)} />
                </td>
                <td>{rowsWords(bundle)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

/** As many characters as stand well in the table; the rest is shown where it is asked for. */
const mostChars = 60;

function Numbers({ words }: { words: string }) {
  if (words.length <= mostChars) return words;
  const cut = words.slice(0, words.lastIndexOf(',', mostChars));
  return (
    <details>
      <summary>{cut} …</summary>
      {words.slice(cut.length + 2)}
    </details>
  );
}
