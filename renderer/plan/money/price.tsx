/** What it costs and what it may be sold for: beside each figure the formula that it comes from. */
import { defaults } from '../../../shared/design/defaults.ts';
import type { Design } from '../../../shared/design/design.ts';
import { type Amount, amountWords } from '../../../shared/materials/amount.ts';
import type { Cost } from '../../../shared/materials/cost.ts';
import type { Materials } from '../../../shared/materials/materials.ts';
import { formatMoney } from '../../../shared/units/money.ts';
import { runCommand } from '../../shell/command-bus.ts';
import { Choices } from '../../shell/fields.tsx';
import { FigureField } from '../leaves/figure-field.tsx';
import { changeMoney } from './money-deeds.ts';
import { MoneyFieldList } from './money-field-list.tsx';
import { labourFields, wholesaleTimes } from './money-fields.ts';

const rows: readonly (readonly [name: string, of: (cost: Cost) => Amount, isSum?: 'sum'])[] = [
  ['Yarn, all its skeins', ({ parts }) => parts.yarn],
  ['Cord', ({ parts }) => parts.cord],
  ['Dowel', ({ parts }) => parts.dowel],
  ['Backing', ({ parts }) => parts.backing],
  ['Pattern fees', ({ parts }) => parts.patternFees],
  ['Cost of materials', ({ materials }) => materials, 'sum'],
  ['Of that to pay now', ({ toPay }) => toPay],
  ['Labour', ({ labour }) => labour],
  ['Overhead', ({ overhead }) => overhead],
  ['Wholesale', ({ wholesale }) => wholesale, 'sum'],
  ['Retail', ({ retail }) => retail, 'sum'],
];

export function Price({ materials: { cost }, design }: { materials: Materials; design: Design }) {
  const money = design.money ?? {};
  const way = money.wholesale ?? defaults.money.wholesale;
  const { key, label } = wholesaleTimes[way];
  const show = (amount: number) => formatMoney(amount, cost.currency ?? undefined);
  return (
    <section aria-label="Cost and price">
      <h3>Cost and price{cost.currency ? ` in ${cost.currency}` : ''}</h3>
      <MoneyFieldList fields={labourFields} design={design} />
      <Choices
        label="Wholesale price"
        value={way}
        options={[
          { value: 'sum', label: 'materials, labour and overhead' },
          { value: 'keystone', label: 'the cost of materials, times a figure (keystone)' },
        ]}
        onChange={(value) => changeMoney('Change how the wholesale price is made', 'wholesale', value)}
      />
      <div className="figure-fields">
        <FigureField
          label={label}
          value={money[key] ?? defaults.money[key]}
          min={0.01}
          max={100}
          onKeep={(value) => changeMoney('Change how the wholesale price is made', key, value)}
        />
        <FigureField
          label="Retail: wholesale, times"
          value={money.retailTimes ?? defaults.money.retailTimes}
          min={0.01}
          max={100}
          onKeep={(value) => changeMoney('Change how the retail price is made', 'retailTimes', value)}
        />
      </div>
      <table className="figures price-table">
        <caption className="unseen">What it costs, what it may be sold for, and how that is reckoned</caption>
        <thead>
          <tr>
            <th scope="col">Of what</th>
            <th scope="col">Amount</th>
            <th scope="col">How it is reckoned</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, of, isSum]) => {
            const amount = of(cost);
            return (
              <tr key={name} className={isSum ? 'sum' : ''}>
                <th scope="row">{name}</th>
                <td>{amountWords(amount, show)}</td>
                <td>{amount.formula}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {cost.missing.length > 0 && (
        <p className="leaf-note">
          Not told yet, so left out: {cost.missing.join('; ')}. What rests on it is at least so much. Write 0
          where something costs nothing.
        </p>
      )}
      <p className="leaf-note">
        What the hanging costs counts the skeins that you own too; what is to pay now leaves them out. Each
        line is rounded before the next is reckoned from it.
      </p>
      <p className="leaf-note">
        Conventions differ between trades and places: the multipliers are yours. The currency is set in the{' '}
        <button type="button" className="plain in-text" onClick={() => runCommand('settings')}>
          settings
        </button>
        {'.'}
      </p>
    </section>
  );
}
