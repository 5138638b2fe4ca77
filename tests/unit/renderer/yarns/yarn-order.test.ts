import { beforeEach, describe, expect, it } from 'vitest';
import { moveChosenYarn, moveYarnTo, stepYarn } from '../../../../renderer/draw/yarns/yarn-deeds.ts';
import { undoStep } from '../../../../renderer/store/changing.ts';
import { chooseCode, openDesign, studio } from '../../../../renderer/store/studio.ts';
import { BARE } from '../../../../shared/design/codes.ts';
import { designFromLetters } from '../../../notation.ts';

const open = () => studio.getState().open!;
const order = () =>
  open()
    .design.yarns.map(({ id }) => id)
    .join(' ');

beforeEach(() => {
  openDesign(designFromLetters(['abc']), null);
  chooseCode(2);
});

describe('the order of the yarns', () => {
  it('changes by one place at a time, each one step', () => {
    moveChosenYarn(1);
    expect(order()).toBe('y1 y3 y2 y4 y5 y6');
    moveChosenYarn(-1);
    moveChosenYarn(-1);
    expect(order()).toBe('y2 y1 y3 y4 y5 y6');
    undoStep();
    expect(order()).toBe('y1 y2 y3 y4 y5 y6');
  });

  it('stays where a yarn can go no further, and leaves no step', () => {
    chooseCode(1);
    moveChosenYarn(-1);
    chooseCode(6);
    moveChosenYarn(1);
    chooseCode(BARE);
    moveChosenYarn(1);
    expect(open().history.done).toEqual([]);
  });

  it('changes by a drag to any place, and not by one to its own', () => {
    moveYarnTo('y5', 0);
    moveYarnTo('y5', 0);
    expect(order()).toBe('y5 y1 y2 y3 y4 y6');
    expect(open().history.done).toHaveLength(1);
  });

  it('is the one in which keys go through the yarns, bare cord last', () => {
    moveYarnTo('y6', 0);
    stepYarn(-1);
    stepYarn(-1);
    expect(open().code).toBe(6);
    stepYarn(-1);
    expect(open().code).toBe(BARE);
  });
});
