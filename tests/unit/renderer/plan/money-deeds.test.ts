import { beforeEach, describe, expect, it } from 'vitest';
import { changeMoney, changeOfYarn } from '../../../../renderer/plan/money/money-deeds.ts';
import { undoStep } from '../../../../renderer/store/changing.ts';
import { openDesign, studio } from '../../../../renderer/store/studio.ts';
import { designFromLetters } from '../../../notation.ts';

const design = () => studio.getState().open!.design;
const useCurrency = (currency: string) =>
  studio.setState(({ settings }) => ({ settings: { ...settings, currency } }));

beforeEach(() => {
  openDesign(designFromLetters(['ab']), null);
  useCurrency('EUR');
});

describe('a price that is told', () => {
  it('is in the currency of the settings, which the design keeps from then on, in one step', () => {
    changeOfYarn('Change the price of Linen', 'y1', 'price', 4.5);
    useCurrency('USD');
    changeMoney('Change the price of the dowel', 'dowelPrice', 6);
    expect(design().yarns[0]!.price).toBe(4.5);
    expect(design().money).toEqual({ currency: 'EUR', dowelPrice: 6 });
    undoStep();
    undoStep();
    expect(design().money).toBeUndefined();
    expect(design().yarns[0]!.price).toBeUndefined();
  });

  it('leaves the money untold where the setting is no code, and where only skeins are counted', () => {
    changeOfYarn('Change what is owned of Linen', 'y1', 'ownedSkeins', 2);
    expect(design().money).toBeUndefined();
    useCurrency('€');
    changeOfYarn('Change the price of Linen', 'y1', 'price', 4.5);
    expect(design().money).toBeUndefined();
  });
});
