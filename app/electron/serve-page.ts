/** Answers the page's own scheme from the fixed list of its files. */
import type { PageFiles } from '../services/page/page-files.ts';
import { pageHeaders } from '../services/page/page-policy.ts';
import { isPageAddress } from './page-address.ts';

const headers = pageHeaders('electron');

export function servePage(page: PageFiles): (request: Request) => Response {
  return ({ url, method }) => {
    const file = method === 'GET' && isPageAddress(url) ? page.get(new URL(url).pathname) : undefined;
    if (!file) return new Response('The studio has no such page.', { status: 404, headers });
    return new Response(file.bytes, { headers: { ...headers, 'content-type': file.type } });
  };
}
