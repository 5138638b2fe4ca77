/** What is changed on the Materials leaf: prices, rates, what is owned. Each is one step of the history. */
import type { YarnId } from '../../../shared/design/codes.ts';
import type { Edit } from '../../../shared/design/edits.ts';
import type { Money, Rates } from '../../../shared/design/schema.ts';
import { changeYarn } from '../../../shared/design/yarn-edits.ts';
import { tellProblem } from '../../shell/notices.tsx';
import { change } from '../../store/changing.ts';
import { studio } from '../../store/studio.ts';

/** Undefined: not told. */
export function changeMoney<K extends keyof Money>(label: string, key: K, value: Money[K] | undefined): void {
  const { open, settings } = studio.getState();
  if (!open) return;
  const { [key]: _, ...rest } = open.design.money ?? {};
  const money: Money = value === undefined ? rest : { ...rest, [key]: value };
  change(label, inItsCurrency(money, settings.currency));
}

/** A price means little without its money, so the design takes the one of the settings where that is a code. */
function inItsCurrency(money: Money, setting: string): Edit {
  const currency = money.currency ?? (isCode(setting) ? setting : undefined);
  return { kind: 'set', field: 'money', value: currency === undefined ? money : { ...money, currency } };
}

export function changeRate(label: string, key: keyof Rates, value: number): void {
  const { open } = studio.getState();
  if (open) change(label, { kind: 'set', field: 'rates', value: { ...open.design.rates, [key]: value } });
}

export function changeMargin(yarnMargin: number): void {
  change('Change the margin of yarn', { kind: 'set', field: 'yarnMargin', value: yarnMargin });
}

/** Undefined: not told. */
export function changeOfYarn(
  label: string,
  id: YarnId,
  key: 'price' | 'ownedSkeins',
  value: number | undefined,
): void {
  const { open, settings } = studio.getState();
  if (!open) return;
  const edit = changeYarn(open.design, id, { [key]: value });
  if (!edit.ok) {
    tellProblem(edit.problem.sentence);
    return;
  }
  const money = open.design.money ?? {};
  const takesCurrency = key === 'price' && money.currency === undefined && isCode(settings.currency);
  const edits = [edit.value, inItsCurrency(money, settings.currency)];
  change(label, takesCurrency ? { kind: 'together', edits } : edit.value);
}

/** A code by ISO 4217, as a design keeps it. */
function isCode(currency: string): boolean {
  return /^[A-Z]{3}$/.test(currency);
}
