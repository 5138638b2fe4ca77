/** Fingers on the screen, by the browser's own protocol: the page hears of them as of real ones. */
import type { Page } from 'playwright-core';

type Touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...points: number[][]) => Promise<unknown>;

/** Each call tells where all fingers are then, as [x, y] in CSS pixels. */
export async function fingersOn(page: Page): Promise<Touch> {
  const session = await page.context().newCDPSession(page);
  return (type, ...points) =>
    session.send('Input.dispatchTouchEvent', {
      type,
      touchPoints: points.map(([x, y], id) => ({ x: x!, y: y!, id })),
    });
}
