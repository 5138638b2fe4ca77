/** Each yarn: what is needed, how sure that is, what is owned, and what to buy. */
import type { Design } from '../../../shared/design/design.ts';
import { amountWords } from '../../../shared/materials/amount.ts';
import { marginThatHolds } from '../../../shared/materials/margin-that-holds.ts';
import type { Materials, YarnNeed } from '../../../shared/materials/materials.ts';
import { withStash } from '../../../shared/materials/with-stash.ts';
import { counted } from '../../../shared/units/counted.ts';
import { formatMass } from '../../../shared/units/mass.ts';
import { formatMoney } from '../../../shared/units/money.ts';
import { formatPercent } from '../../../shared/units/percent.ts';
import { formatUncertain } from '../../../shared/units/uncertain.ts';
import { formatYarnLength } from '../../../shared/units/yarn-length.ts';
import type { Stash } from '../../../shared/yarn/stash.ts';
import { Ball } from '../../draw/yarns/ball.tsx';
import { shownNumber } from '../../shell/written-number.ts';
import { useStudio } from '../../store/use-studio.ts';
import { FigureField } from '../leaves/figure-field.tsx';
import { nothingTied } from '../plan-words.ts';
import { changeMargin, changeOfYarn } from './money-deeds.ts';
import { dyeLotWords, enoughWords, usedWords } from './need-words.ts';

interface YarnTableProps {
  readonly materials: Materials;
  readonly design: Design;
  readonly stash: Stash;
}

export function YarnTable({ materials, design, stash }: YarnTableProps) {
  const units = useStudio((state) => state.settings.units);
  const { yarns, totals, gauge, cost } = materials;
  const enough = { enough: true };
  const margin = formatPercent(design.yarnMargin);
  const holding = marginThatHolds(yarns);
  const sum = (of: (need: YarnNeed) => number) => yarns.reduce((so, need) => so + of(need), 0);
  const withMarginMm = sum((need) => need.withMarginMm);
  const skeins = sum((need) => need.skeins);
  const show = (amount: number) => formatMoney(amount, cost.currency ?? undefined);
  const owned = new Map(withStash(design, stash).yarns.map(({ id, ownedSkeins }) => [id, ownedSkeins]));
  if (yarns.length === 0) return <p className="quiet">{nothingTied('take')}</p>;
  return (
    <section aria-label="Yarn">
      <h3>Yarn</h3>
      <table className="figures yarn-needs">
        <caption className="unseen">What is needed of each yarn, what is owned and what to buy</caption>
        <thead>
          <tr>
            <th scope="col">Yarn</th>
            <th scope="col">To cut, and used of it</th>
            <th scope="col">With {margin} margin</th>
            <th scope="col">Skeins you own</th>
            <th scope="col">Skeins to buy</th>
            <th scope="col">Price of a skein</th>
            <th scope="col">To pay now</th>
          </tr>
        </thead>
        <tbody>
          {yarns.map((need) => (
            <NeedRow key={need.id} {...{ need, design, show }} inStash={owned.get(need.id)} />
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Together</th>
            <td>
              {formatYarnLength(totals.yarnCutMm, units, enough)}
              <br />
              <span className="quiet">
                {formatUncertain(totals.uncertain.yarnUsedMm, (mm) => formatYarnLength(mm, units, enough))}
              </span>
            </td>
            <td>
              {formatYarnLength(withMarginMm, units, enough)}
              <br />
              <span className="quiet">
                {counted(skeins, 'skein')},{' '}
                {formatMass(totals.yarnMassG * (1 + design.yarnMargin), units, enough)}
              </span>
            </td>
            <td />
            <td>{sum(({ toBuySkeins }) => toBuySkeins)}</td>
            <td />
            <td>{amountWords(cost.yarnToBuy, show)}</td>
          </tr>
        </tfoot>
      </table>
      <p className="leaf-note">
        {usedWords} {gauge.basis.yarn.sentence}
      </p>
      <p className="leaf-note">{enoughWords(yarns)}</p>
      {holding !== null && (
        <div>
          <button type="button" onClick={() => changeMargin(holding)}>
            Use a margin of {formatPercent(holding)}
          </button>
        </div>
      )}
      {dyeLotWords(yarns) && <p className="leaf-note">{dyeLotWords(yarns)}</p>}
      <div className="figure-fields">
        <FigureField
          label="Margin of yarn"
          unit="%"
          hint="Bought above the need, for mistakes and swatches."
          value={design.yarnMargin * 100}
          min={0}
          max={1000}
          onKeep={(percent) => percent !== undefined && changeMargin(percent / 100)}
        />
      </div>
    </section>
  );
}

interface NeedRowProps {
  readonly need: YarnNeed;
  readonly design: Design;
  /** Skeins at home, by the design or the stash. */
  readonly inStash: number | undefined;
  /** Writes money. */
  readonly show: (amount: number) => string;
}

function NeedRow({ need, design, inStash, show }: NeedRowProps) {
  const units = useStudio((state) => state.settings.units);
  const yarn = design.yarns.find(({ id }) => id === need.id);
  // A yarn may be gone while the plan without it is still being made.
  if (!yarn) return null;
  const { id, name, color, symbol, price, ownedSkeins } = yarn;
  const length = (mm: number) => formatYarnLength(mm, units, { enough: true });
  return (
    <tr>
      <th scope="row">
        <span className="needed-yarn">
          <Ball color={color} symbol={symbol} />
          <span className="two-lines" title={name}>
            {name}
          </span>
        </span>
      </th>
      <td>
        {length(need.cutMm)}
        <br />
        <span className="quiet">{formatUncertain(need.uncertain.usedMm, length)}</span>
      </td>
      <td>
        {length(need.withMarginMm)}
        <br />
        <span className="quiet">{counted(need.skeins, 'skein')}</span>
      </td>
      <td>
        <FigureField
          label={`Skeins of ${name} that you own`}
          isLabelUnseen
          value={ownedSkeins}
          placeholder={inStash === undefined ? '' : shownNumber(inStash)}
          mayBeEmpty
          min={0}
          max={100_000}
          onKeep={(value) => changeOfYarn(`Change what is owned of ${name}`, id, 'ownedSkeins', value)}
        />
      </td>
      <td className="now">{need.toBuySkeins}</td>
      <td>
        <FigureField
          label={`Price of a skein of ${name}`}
          isLabelUnseen
          value={price}
          mayBeEmpty
          min={0}
          max={1_000_000}
          onKeep={(value) => changeOfYarn(`Change the price of ${name}`, id, 'price', value)}
        />
      </td>
      <td>
        {amountWords(
          { amount: (price ?? 0) * need.toBuySkeins, whole: price !== undefined || need.toBuySkeins === 0 },
          show,
        )}
      </td>
    </tr>
  );
}
