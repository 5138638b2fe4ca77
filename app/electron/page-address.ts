/** Where Electron's page lives: a scheme of the studio's own, so that it is never a file and never a site. */
export const PAGE_SCHEME = 'larkrow';
const PAGE_ORIGIN = `${PAGE_SCHEME}://studio`;
export const PAGE_ADDRESS = `${PAGE_ORIGIN}/index.html`;

export function isPageAddress(address: string): boolean {
  return address.startsWith(`${PAGE_ORIGIN}/`);
}
