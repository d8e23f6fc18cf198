/**
 * The content security policy of the page: nothing off origin, no eval, no inline script or style. It is sent by our
 * own server and stands in the page itself, so that any static host keeps it.
 */
const DIRECTIVES = {
  'default-src': "'self'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' data: blob:",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'object-src': "'none'",
  'base-uri': "'none'",
  'form-action': "'none'",
} as const;

export const contentSecurityPolicy = Object.entries(DIRECTIVES)
  .map(([name, value]) => `${name} ${value}`)
  .join('; ');

/** Only a header can say who may frame the page. */
export const contentSecurityPolicyHeader = `${contentSecurityPolicy}; frame-ancestors 'none'`;
