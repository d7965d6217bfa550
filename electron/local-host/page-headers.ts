/**
 * What every answer with a part of the page says, in Electron and in a browser: nothing comes from anywhere but the
 * program, nothing in the text of the page runs as a script or a style, and no other page may hold this one.
 */
export function pageHeaders(type: string, socketAddress: string | null): Record<string, string> {
  const policy = [
    "default-src 'none'",
    "script-src 'self'",
    "style-src 'self'",
    "font-src 'self'",
    "img-src 'self' data: blob:",
    `connect-src 'self'${socketAddress ? ` ${socketAddress}` : ''}`,
    "base-uri 'none'",
    "form-action 'none'",
    "frame-ancestors 'none'",
    "require-trusted-types-for 'script'",
  ];
  return {
    'content-type': type,
    'content-security-policy': policy.join('; '),
    'x-content-type-options': 'nosniff',
    'x-frame-options': 'DENY',
    'referrer-policy': 'no-referrer',
    'cross-origin-opener-policy': 'same-origin',
    'cross-origin-resource-policy': 'same-origin',
    'permissions-policy': 'camera=(), microphone=(), geolocation=(), usb=(), serial=(), midi=(), hid=()',
    'cache-control': 'no-store',
  };
}
