/**
 * What the page may do. Everything comes from where the page came from; there is no inline script
 * or style and nothing is evaluated. Scripts may set `element.style`, which the policy allows.
 */
const directives = {
  'default-src': "'none'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' data: blob:",
  'font-src': "'self'",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'manifest-src': "'self'",
  'base-uri': "'none'",
  'form-action': "'none'",
};

const asText = Object.entries(directives)
  .map(([name, sources]) => `${name} ${sources}`)
  .join('; ');

/** For the page itself, so that the policy holds on any host and in a saved copy. */
export const metaPolicy = asText;

/** For a server. Browsers honour `frame-ancestors` only here. */
export const headerPolicy = `${asText}; frame-ancestors 'none'`;
