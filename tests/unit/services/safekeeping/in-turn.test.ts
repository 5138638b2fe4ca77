import { setTimeout } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { inTurn } from '../../../../app/services/safekeeping/in-turn.ts';

describe('deeds in turn', () => {
  it('happen one after the other for one file, and side by side for two', async () => {
    const turn = inTurn();
    const done: string[] = [];
    const deed = (path: string, name: string, ms: number) =>
      turn(path, async () => {
        await setTimeout(ms);
        done.push(name);
      });
    await Promise.all([deed('/a', 'a1', 60), deed('/a', 'a2', 1), deed('/b', 'b1', 1)]);
    expect(done).toEqual(['b1', 'a1', 'a2']);
  });

  it('go on after one that failed, which fails for its own caller only', async () => {
    const turn = inTurn();
    const failed = turn('/a', () => Promise.reject(new Error('not this one')));
    const next = turn('/a', async () => 'this one');
    await expect(failed).rejects.toThrow('not this one');
    expect(await next).toBe('this one');
  });
});
