/** The one style sheet that the component library writes into the page itself; checked again at each update of it. */
const ariaStyle = `'sha256-38RhXrc7EdReTKsOm23ZPOCUgniTUUcjky8QOOrQx6o='`;

/** What the page may load and run: its own files and nothing else. The same text on both hosts. */
export const contentPolicy = [
  `default-src 'none'`,
  `script-src 'self'`,
  `style-src 'self' ${ariaStyle}`,
  `img-src 'self' data: blob:`,
  `font-src 'self'`,
  `connect-src 'self'`,
  `worker-src 'self'`,
  `manifest-src 'self'`,
  `frame-src 'self' blob:`,
  `base-uri 'none'`,
  `form-action 'none'`,
  `frame-ancestors 'none'`,
  `object-src 'none'`,
  `require-trusted-types-for 'script'`,
  `trusted-types app`,
].join('; ');

/** Headers of every answer, on both hosts. */
export const safeHeaders: Readonly<Record<string, string>> = {
  'content-security-policy': contentPolicy,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'cache-control': 'no-store',
  'permissions-policy': 'camera=(), microphone=(), geolocation=()',
};
