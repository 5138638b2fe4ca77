import { describe, expect, it } from 'vitest';
import { ballsBetween, harmonyBalls } from '../../../../renderer/draw/yarns/harmony-balls.ts';
import { complementary, lighter } from '../../../../shared/yarn/harmony.ts';

describe('yarns that go with a yarn', () => {
  it('are offered with their colours', () => {
    const balls = harmonyBalls('#566a94');
    expect(balls.map(({ label }) => label)).toEqual(['Lighter', 'Darker', 'Softer', 'Complementary']);
    expect(balls[0]!.color).toBe(lighter('#566a94'));
    expect(balls[3]!.color).toBe(complementary('#566a94'));
  });

  it('say why there is none, where white can’t be lighter and a grey has no opposite', () => {
    const faults = (color: string) =>
      harmonyBalls(color).map(({ color: made, fault }) => [made === null, fault]);
    expect(faults('#ffffff')[0]).toEqual([true, 'It is white already.']);
    expect(faults('#000000')[1]).toEqual([true, 'It is black already.']);
    expect(faults('#777777').slice(2)).toEqual([
      [true, 'It is a grey already.'],
      [true, 'A grey has no opposite.'],
    ]);
    expect(faults('#777777')[0]).toEqual([false, '']);
  });

  it('lie between two, each in its place, unless the two are too close', () => {
    const colors = ballsBetween('#000000', '#ffffff').map(({ color }) =>
      Number.parseInt(color!.slice(1, 3), 16),
    );
    expect(colors).toEqual([...colors].sort((a, b) => a - b));
    expect(new Set(colors).size).toBe(3);
    expect(ballsBetween('#102030', '#102030').every(({ color }) => color === null)).toBe(true);
  });
});
