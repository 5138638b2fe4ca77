import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { describe, expect, it } from 'vitest';
import { showPage } from './browser.ts';

/** A server that answers every address with this page. */
async function serve(html: string) {
  const server = createServer((_, response) => response.setHeader('content-type', 'text/html').end(html));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    close: () => new Promise((resolve) => server.close(resolve)),
  };
}

describe('the browser that tests drive', () => {
  it('shows a page at the size that was asked for', async () => {
    const server = await serve('<!doctype html><title>Dowel</title>');
    const shown = await showPage(server.url, { width: 900, height: 600 });
    const seen = await shown.page.evaluate(() => [document.title, innerWidth, innerHeight]);
    await shown.close();
    await server.close();
    expect(seen).toEqual(['Dowel', 900, 600]);
  });

  it('notes what a page asks of another origin, and what goes wrong in it', async () => {
    const other = await serve('');
    const server = await serve(
      `<!doctype html><link rel="icon" href="data:,"><img src="${other.url}cord.png"><script>loose()</script>`,
    );
    const shown = await showPage(server.url);
    await shown.close();
    await server.close();
    await other.close();
    expect(shown.foreignRequests).toEqual([`${other.url}cord.png`]);
    expect(shown.errors).toHaveLength(1);
    expect(shown.errors[0]).toContain('loose is not defined');
  });
});
