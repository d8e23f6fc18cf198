import type { PortChange } from './portChanges';

/** What a form may ask to have changed in a text. */
export type Wish =
  | { readonly set: 'temperature'; readonly toC: number }
  | { readonly set: 'humidity'; readonly toPercent: number }
  | { readonly set: 'charge'; readonly toG: number }
  | { readonly set: 'complaint' | 'title'; readonly to: string }
  | {
      readonly set: 'vehicle';
      readonly to: string;
      readonly refrigerant: string;
      readonly chargeG: number;
      readonly ports: readonly PortChange[];
      /** Who may lay hands on it, who is trained least first. */
      readonly persons: readonly string[];
    }
  | {
      readonly set: 'fault';
      readonly at: number;
      readonly to: string;
      /** Parts that mend the fault there was, and the new one. */
      readonly parts: { readonly before: readonly string[]; readonly after: readonly string[] };
    }
  | { readonly set: 'severity'; readonly at: number; readonly to: number }
  | { readonly add: 'fault'; readonly id: string; readonly severity: number }
  | { readonly remove: 'fault'; readonly at: number };

/** Places that had to be changed along, so that the file goes on saying one thing. */
export type Along = 'answer' | 'plan' | 'parts' | 'varies' | 'contents' | 'ports' | 'person';
