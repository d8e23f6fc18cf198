/** Texts in links and in the browser's store: what goes in comes out, and what was tampered with comes to nothing. */
import { deflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { hashText } from '../../src/numerics/hash';
import { templateText } from '../../src/session/scenario/templates';
import { draftIn } from '../../src/workshop/keep/drafts';
import { disclose, enclose, isEnclosing, MOST_LINK_LETTERS } from '../../src/workshop/keep/enclosed';
import { MOST_BYTES, readFile } from '../../src/workshop/keep/readFile';
import { templatesForLinks } from '../../src/workshop/keep/starts';

const TEXT = 'title: "¿Frío o no?"\nweather: { temperature: 30 degC }\n';

/** A link as somebody else would make it. */
const linkOf = (bytes: Uint8Array): string =>
  `#enclosed=${Buffer.from(deflateRawSync(bytes)).toString('base64url')}`;

describe('a text in a link', () => {
  it('comes out as it went in, in letters that an address may hold', async () => {
    const hash = await enclose(TEXT, templatesForLinks);
    expect(hash).toMatch(/^#enclosed=[\w-]+$/);
    expect(await disclose(hash, templatesForLinks)).toBe(TEXT);
    expect(isEnclosing('#main')).toBe(false);
    expect(await disclose('#main', templatesForLinks)).toBeNull();
  });

  it('comes to nothing where it swells over 256 KiB, however short the link is', async () => {
    const flood = linkOf(Buffer.alloc(300_000, 32));
    expect(flood.length).toBeLessThan(MOST_LINK_LETTERS);
    expect(await disclose(flood, templatesForLinks)).toBeNull();
    expect(await disclose(linkOf(Buffer.alloc(200_000, 32)), templatesForLinks)).toHaveLength(200_000);
  });

  it('comes to nothing where it is cut, longer than links are, no UTF-8, or holds what no text does', async () => {
    const hash = await enclose(TEXT, templatesForLinks);
    expect(await disclose(hash.slice(0, -9), templatesForLinks)).toBeNull();
    expect(await disclose('#enclosed=***', templatesForLinks)).toBeNull();
    expect(await disclose(`#enclosed=${'A'.repeat(MOST_LINK_LETTERS)}`, templatesForLinks)).toBeNull();
    expect(await disclose(linkOf(Buffer.from('a\0b')), templatesForLinks)).toBeNull();
    expect(await disclose(linkOf(Uint8Array.of(0xff, 0xfe, 0x41)), templatesForLinks)).toBeNull();
  });
});

describe('a text that was begun with a template', () => {
  it('comes to a short link, and comes back to the letter', async () => {
    const template = await templateText('two-faults');
    const own = template
      .replace(/^title: .*$/m, 'title: Mine')
      .replace(/^(complaint: ).*$/m, '$1It was fine until June.')
      .replace('schema: 1\n', 'schema: 1\n# a remark of my own\n')
      .replace(/^tasks: .*\n/m, '');
    const hash = await enclose(own, templatesForLinks);
    expect(hash.length).toBeLessThan(400);
    expect(await disclose(hash, templatesForLinks)).toBe(own);
  });

  it('comes to a short link in another language too', async () => {
    const template = await templatesForLinks.text('look-alike-es');
    const own = template.replace(/^title: .*$/m, 'title: La mía');
    const hash = await enclose(own, templatesForLinks);
    expect(hash.length).toBeLessThan(200);
    expect(await disclose(hash, templatesForLinks)).toBe(own);
  });

  it('comes to nothing with another version of the template, or with lines it has not', async () => {
    const template = await templateText('one-fault');
    const read = (told: string): Promise<string | null> =>
      disclose(linkOf(Buffer.from(told)), templatesForLinks);
    const head = `@one-fault ${hashText(template)}`;
    expect(await read(`${head}\n=1\n+b`)).toBe(`${template.split('\n')[0]}\nb`);
    expect(await read('@one-fault 0123456789abcdef\n=3')).toBeNull();
    expect(await read(`${head}\n=99999`)).toBeNull();
    expect(await read(`${head}\n?1`)).toBeNull();
    expect(await read(`@no-such ${hashText('')}\n=1`)).toBeNull();
  });
});

describe('a file', () => {
  it('is text in UTF-8 of at most 256 KiB, or is told to be none', async () => {
    expect(await readFile(new Blob([TEXT]))).toEqual({ text: TEXT });
    expect(await readFile(new Blob([Uint8Array.of(0xe9, 0x20)]))).toEqual({ trouble: 'notText' });
    expect(await readFile(new Blob(['a\0b']))).toEqual({ trouble: 'notText' });
    for (const blank of ['', ' \n']) expect(await readFile(new Blob([blank]))).toEqual({ trouble: 'empty' });
    expect(await readFile(new Blob(['x'.repeat(MOST_BYTES + 1)]))).toEqual({ trouble: 'tooLarge' });
  });
});

it('a kept draft is believed only where it is one', () => {
  expect(draftIn(JSON.stringify({ text: TEXT, atMs: 5, tab: 'a' }))).toEqual({
    text: TEXT,
    atMs: 5,
    tab: 'a',
  });
  expect(draftIn(JSON.stringify({ text: TEXT }))).toMatchObject({ text: TEXT, atMs: 0 });
  // too long to be checked, but somebody's work
  const long = 'x'.repeat(MOST_BYTES + 1);
  expect(draftIn(JSON.stringify({ text: long }))?.text).toBe(long);
  for (const stored of [null, '', '{', 'null', '{"text":""}', '{"text":7}'])
    expect(draftIn(stored)).toBeNull();
});
