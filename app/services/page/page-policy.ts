/**
 * What the page may load and do: its own scripts, styles, fonts and pictures, and nothing from anywhere else. The
 * browser host's page asks its host over the network, Electron's does not.
 */
const policy = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'font-src': "'self'",
  'img-src': "'self' blob:",
  'worker-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
  'frame-ancestors': "'none'",
};

/** The value of the header Content-Security-Policy. */
function pagePolicy(host: 'electron' | 'browser'): string {
  const all = host === 'browser' ? { ...policy, 'connect-src': "'self'" } : policy;
  return Object.entries(all)
    .map(([what, where]) => `${what} ${where}`)
    .join('; ');
}

/** Headers of every answer to the page. */
export function pageHeaders(host: 'electron' | 'browser'): Record<string, string> {
  return {
    'content-security-policy': pagePolicy(host),
    'x-content-type-options': 'nosniff',
    'x-frame-options': 'DENY',
    'referrer-policy': 'no-referrer',
    'cross-origin-opener-policy': 'same-origin',
    'cross-origin-resource-policy': 'same-origin',
    'permissions-policy': 'camera=(), microphone=(), geolocation=(), usb=(), serial=(), hid=()',
    'cache-control': 'no-store',
  };
}
