/**
 * Which pieces to cut before the first knot: by yarn and length, numbered in the order of use, to be ticked off, with
 * labels to print for them.
 */
import { useEffect } from 'react';
import type { Bundle, Bundles } from '../../../shared/materials/bundles/bundles.ts';
import { usualFitting } from '../../../shared/materials/bundles/fitted-plan.ts';
import { formatLength } from '../../../shared/units/length.ts';
import { formatPercent } from '../../../shared/units/percent.ts';
import { saveLabels } from '../../flows/exporting.ts';
import { set } from '../../settings/settings.tsx';
import { Choices } from '../../shell/fields.tsx';
import { useStudio } from '../../store/use-studio.ts';
import { LeafPage } from '../leaves/leaf.tsx';
import { counted } from '../plan-words.ts';
import { plans, usePlans } from '../plans/plans.ts';
import { bundleKey, chooseFitted, useBundleChoices } from './bundle-choices.ts';
import { bundlesWords, savingWords } from './bundle-words.ts';
import { YarnBundles } from './yarn-bundles.tsx';
import './bundles.css';

export function BundlesLeaf() {
  const told = usePlans((state) => state.bundles);
  const problem = usePlans((state) => state.problem);
  useEffect(() => {
    plans.setState({ wantsBundles: true });
    return () => plans.setState({ wantsBundles: false });
  }, []);
  return (
    <LeafPage
      title="Bundles"
      about="What to cut before the first knot. Tie the pieces of one yarn and one length into a bundle; the numbers count a yarn’s pieces in the order in which the steps attach them."
    >
      {problem && <p className="fault">{problem}</p>}
      {!problem && !told && <p className="quiet">Planning…</p>}
      {!problem && told && told.whole.pieces === 0 && (
        <p className="quiet">Every cell is bare: there is nothing to cut yet. Draw on the Draw screen.</p>
      )}
      {!problem && told && told.whole.pieces > 0 && <CutList {...told} />}
    </LeafPage>
  );
}

function CutList({ whole, fitted }: { whole: Bundles; fitted: Bundles }) {
  const { units, paper } = useStudio((state) => state.settings);
  const workingMm = useStudio((state) => state.open?.design.tying.workingLengthMm ?? 0);
  const isFull = usePlans((state) => state.full !== null);
  const choices = useBundleChoices();
  const shown = choices.fitted ? fitted : whole;
  const step = formatLength(usualFitting.roundUpMm, units);
  return (
    <>
      <div className="bundle-choices">
        <Choices
          label="Cut each piece"
          value={choices.fitted ? 'fitted' : 'whole'}
          options={[
            {
              value: 'whole',
              label: `at the working length, ${formatLength(workingMm, units, { enough: true })}`,
            },
            {
              value: 'fitted',
              label: `to measure: with ${formatPercent(usualFitting.reserve)} in reserve, up to the next ${step}`,
            },
          ]}
          onChange={(value) => chooseFitted(value === 'fitted')}
        />
        <p role="status">
          <strong>{bundlesWords(shown, units)}</strong> {savingWords(fitted, units)}
        </p>
      </div>
      <Ticked bundles={shown.bundles} />
      {byYarn(shown).map((bundles) => (
        <YarnBundles key={bundles[0]!.yarn} bundles={bundles} />
      ))}
      <section className="labels-room" aria-label="Labels">
        <h3>Labels to hang on the bundles</h3>
        <Choices
          label="Paper"
          value={paper}
          options={[
            { value: 'a4', label: 'A4' },
            { value: 'letter', label: 'Letter' },
          ]}
          onChange={(next) => set({ paper: next })}
        />
        {!isFull && (
          <p className="quiet small">
            This is a quick plan. Labels are printed from the full one, which may take a few pieces less.
          </p>
        )}
        <button type="button" className="main" onClick={() => saveLabels(choices.fitted)}>
          Print labels…
        </button>
      </section>
    </>
  );
}

function Ticked({ bundles }: { bundles: readonly Bundle[] }) {
  const opening = useStudio((state) => state.open?.opening ?? 0);
  const { cut } = useBundleChoices();
  const done = bundles.filter((bundle) => cut.has(bundleKey(opening, bundle)));
  const pieces = (of: readonly Bundle[]) => of.reduce((sum, each) => sum + each.pieces.length, 0);
  const words = `Cut: ${pieces(done).toLocaleString('en')} of ${counted(pieces(bundles), 'piece')}`;
  return (
    <div className="bundles-cut">
      <span role="status">{words}</span>
      <progress value={pieces(done)} max={pieces(bundles)} aria-label="Pieces that are cut" />
    </div>
  );
}

function byYarn({ bundles }: Bundles): Bundle[][] {
  const yarns: Bundle[][] = [];
  for (const bundle of bundles) {
    const last = yarns.at(-1);
    if (last?.[0]?.yarn === bundle.yarn) last.push(bundle);
    else yarns.push([bundle]);
  }
  return yarns;
}
