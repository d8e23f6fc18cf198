/** A screen for pictures: how to get there, what the browser is set to, and the screens behind it. */
import type { Page } from 'playwright-core';

export interface Scene {
  readonly name: string;
  readonly reach: (page: Page, address: string) => Promise<void>;
  /** Screens of the same sitting, each reached from the one before. */
  readonly then?: readonly Further[];
  /** Kept settings of the program, before anything is opened. */
  readonly settings?: Readonly<Record<string, string>>;
  /** Twice the size of text. */
  readonly large?: true;
  /** Light alone, where dark is shown well enough by others. */
  readonly lightOnly?: true;
}

export interface Further {
  readonly name: string;
  readonly reach: (page: Page) => Promise<void>;
  /** What is brought into view at each size. */
  readonly shows?: string;
}
