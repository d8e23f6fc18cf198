/** Vite plugin: writes the content security policy into the head of every built page. */
import type { Plugin } from 'vite';
import { contentSecurityPolicy } from './policy.ts';

export function policyTag(): Plugin {
  return {
    name: 'portside:policy',
    apply: 'build',
    transformIndexHtml: () => [
      {
        tag: 'meta',
        attrs: { 'http-equiv': 'Content-Security-Policy', content: contentSecurityPolicy },
        injectTo: 'head-prepend',
      },
    ],
  };
}
