import { describe, expect, it } from 'vitest';
import { hexToOkLab } from '../../../shared/yarn/colour.ts';
import { between, complementary, darker, lighter, softer } from '../../../shared/yarn/harmony.ts';

const yarns = ['#566a94', '#28455f', '#e0955a', '#9e3329', '#5b7f4f'];

describe('a colour made from another', () => {
  it('is another one, which a screen can show', () => {
    for (const hex of yarns) {
      for (const made of [
        lighter(hex),
        darker(hex),
        softer(hex),
        complementary(hex),
        between(hex, '#e6ddc9', 0.5),
      ]) {
        expect(made).toMatch(/^#[0-9a-f]{6}$/);
        expect(made).not.toBe(hex);
      }
    }
  });

  it('reaches white and black step by step and stays there', () => {
    let [up, down] = ['#9e3329', '#9e3329'];
    for (let steps = 0; steps < 14; steps++) [up, down] = [lighter(up), darker(down)];
    expect([up, down]).toEqual(['#ffffff', '#000000']);
    expect([lighter('#ffffff'), darker('#000000')]).toEqual(['#ffffff', '#000000']);
  });

  it('is neither softer nor opposite where it has no hue', () => {
    for (const grey of ['#000000', '#777777', '#ffffff']) {
      expect([softer(grey), complementary(grey)]).toEqual([grey, grey]);
    }
  });

  it('stands opposite in hue: blue to orange, red to teal', () => {
    const hue = (hex: string) => {
      const { a, b } = hexToOkLab(hex);
      return ((Math.atan2(b, a) * 180) / Math.PI + 360) % 360;
    };
    for (const hex of yarns) {
      const turned = (hue(complementary(hex)) - hue(hex) + 360) % 360;
      expect(Math.abs(turned - 180)).toBeLessThan(3);
    }
  });

  it('lies halfway between two in lightness', () => {
    const halfway = (hexToOkLab('#28455f').l + hexToOkLab('#e6ddc9').l) / 2;
    expect(hexToOkLab(between('#28455f', '#e6ddc9', 0.5)).l).toBeCloseTo(halfway, 2);
  });
});
