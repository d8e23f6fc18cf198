/**
 * What the prover found out about a scenario: plain data, the same bytes wherever it was reckoned. Sentences are made of it
 * by whoever shows it; times are minutes, scores 0 to 100, information nats.
 */
import type { YamlPath } from '../../shared/schema/readYaml';
import type { ApartTable } from './apartTable';
import type { FindingCode } from './findingCodes';
import type { KnowRun } from './knowRun';
import type { ProofPart } from './seedsThatFit';

/** What the author's own solution has to score at least. */
export const SOLUTION_MARK = 95;

export interface ProofRequest {
  /** Seeds 1 to this many. */
  readonly seeds: number;
  /** Steps of plants that may be spent; null where nothing is to be left out. */
  readonly budgetSteps: number | null;
}

export interface Proof {
  readonly scenario: string;
  readonly title: string;
  readonly scenarioHash: string;
  readonly engineHash: string;
  readonly request: ProofRequest;
  readonly verdict: 'holds' | 'refused';
  /** Errors first; those are why it is refused. */
  readonly findings: readonly ProofFinding[];
  readonly solved: Solved;
  /** Lazy players, in their fixed order. */
  readonly luck: readonly Luck[];
  /** What is wrong with the scenario's own car, as suspects are called. */
  readonly own: readonly string[];
  /** Of those the causes that the author's own solution calls no more than likely, beside others that it is sure of. */
  readonly guessed: readonly string[];
  /** Null where nothing is to be diagnosed. */
  readonly apart: ApartTable | null;
  readonly fairness: Fairness;
  readonly worth: Worth | null;
  readonly leftOut: readonly LeftOut[];
}

export interface ProofFinding {
  readonly code: FindingCode;
  readonly level: 'error' | 'warning';
  /** Where in the scenario's file. */
  readonly path: YamlPath;
  /** What its sentence is about: ids, and numbers not yet written. */
  readonly values: Readonly<Record<string, string | number | readonly number[] | readonly string[]>>;
}

export interface Spread {
  readonly least: number;
  readonly mean: number;
  readonly most: number;
}

export interface Solved {
  /** The author's own solution. */
  readonly solution: {
    readonly seeds: readonly number[];
    readonly scores: Spread;
    /** Seeds on which it scored under `SOLUTION_MARK`. */
    readonly low: readonly number[];
    /** Critical rules it broke. */
    readonly critical: readonly string[];
  };
  /** The player that asks for information; null where nothing is to be diagnosed. */
  readonly know: {
    readonly seeds: readonly number[];
    /** Seeds on which it proved the right cause and decided rightly. */
    readonly right: readonly number[];
    readonly runs: readonly KnowRun[];
  } | null;
}

export interface Luck {
  readonly player: string;
  /** Looks at nothing. */
  readonly isBlind: boolean;
  readonly seeds: readonly number[];
  readonly passed: readonly number[];
  /** As reported: one below the mark at most where something critical was broken. */
  readonly scores: Spread;
}

export interface Fairness {
  /** Of the solution over its seeds. */
  readonly scores: Spread;
  /** What finding the cause cost over the seeds; null where nothing is to be diagnosed. */
  readonly costMinutes: Spread | null;
  /** Seeds on which nobody got there. */
  readonly unsolvable: readonly number[];
}

export interface Worth {
  /** Tests that told something, most first. */
  readonly tests: readonly {
    readonly test: string;
    /** Mean over the seeds on which it was taken; what was read together shares evenly. */
    readonly nats: number;
    readonly taken: number;
  }[];
  readonly costMinutes: Spread;
  readonly hints: readonly HintWorth[];
}

export interface HintWorth {
  /** Counts from 1. */
  readonly level: number;
  /** Causes that its words name. */
  readonly names: readonly string[];
  /** Tests of the bench that its words point to. */
  readonly tests: readonly string[];
  /** What is believed of the car's own trouble before anything is read, and once those tests are. */
  readonly shareBefore: number;
  readonly shareAfter: number;
}

export interface LeftOut {
  readonly what: ProofPart;
  readonly asked: number;
  readonly done: number;
}
