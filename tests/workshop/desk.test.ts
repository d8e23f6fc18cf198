/** The page's end of the workshop's workers: speaks as the page does by now, and does not stay broken. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { openDesk } from '../../src/workshop/reader/desk';
import type { Request, Spoken } from '../../src/workshop/reader/protocol';

const ENGLISH: Spoken = {
  language: 'en',
  marks: { decimal: '.', thousands: ',', leastGrouped: 4 },
  units: { pressure: 'psi', temperature: 'degF', mass: 'oz' },
};

/** A thread that answers when it is told to. */
class Planted {
  static readonly all: Planted[] = [];
  readonly asked: Request[] = [];
  isEnded = false;
  onmessage: ((event: { readonly data: unknown }) => void) | null = null;
  onerror: ((event: { readonly message: string }) => void) | null = null;
  constructor() {
    Planted.all.push(this);
  }
  postMessage(message: Request): void {
    this.asked.push(message);
  }
  terminate(): void {
    this.isEnded = true;
  }
  answer(): void {
    const last = this.asked[this.asked.length - 1];
    this.onmessage?.({ data: { number: last.number, gives: 'vocabulary', vocabulary: 'words' } });
  }
}

describe('a desk', () => {
  afterEach(() => {
    vi.unstubAllGlobals();
    Planted.all.length = 0;
  });

  it('asks another reader after one that broke', async () => {
    vi.stubGlobal('Worker', Planted);
    const desk = openDesk(() => ENGLISH);
    const first = desk.vocabulary();
    Planted.all[0].onerror?.({ message: 'out of memory' });
    await expect(first).rejects.toThrow('out of memory');
    expect(Planted.all[0].isEnded).toBe(true);
    const second = desk.vocabulary();
    expect(Planted.all.length).toBe(2);
    Planted.all[1].answer();
    expect(await second).toBe('words');
  });

  it('says with each question how the page speaks by then', () => {
    vi.stubGlobal('Worker', Planted);
    let spoken = ENGLISH;
    const desk = openDesk(() => spoken);
    void desk.look('a');
    spoken = { ...ENGLISH, language: 'es' };
    void desk.look('b');
    expect(Planted.all[0].asked.map((one) => one.spoken.language)).toEqual(['en', 'es']);
  });
});
