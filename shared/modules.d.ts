/** A YAML file of shared/ or scenarios/, made into plain data when the project is built. */
declare module '*.yaml' {
  const data: unknown;
  export default data;
}

/** The drawings that a layout's parts wear, or that a list names; see shared/build/partModules.ts. */
declare module '*.yaml?parts' {
  const bundle: unknown;
  export default bundle;
}

/** Hash of everything that decides how a log is played and scored; see shared/build/engineModule.ts. */
declare module 'virtual:engine-hash' {
  const hash: string;
  export default hash;
}

/** The same over that and what a proof hangs on besides. */
declare module 'virtual:prover-hash' {
  const hash: string;
  export default hash;
}

/** Lots of words by language; see shared/build/wordModules.ts. */
declare module 'virtual:words' {
  type Lot = () => Promise<Readonly<Record<string, string>>>;
  const words: Readonly<
    Record<
      string,
      Readonly<
        Record<'page' | 'job' | 'findings' | 'inside' | 'written' | 'pages' | 'workshop' | 'line', Lot>
      >
    >
  >;
  export default words;
}

/** What is told of scenarios and of the law, by language; see shared/build/wordModules.ts. */
declare module 'virtual:told' {
  type ByLanguage<Value> = Readonly<Record<string, Value>>;
  type Texts = import('./schema/scenarioWords').ScenarioWords;
  type ByScenario<Value> = ByLanguage<Readonly<Record<string, () => Promise<Value>>>>;
  export const onShelf: ByLanguage<
    () => Promise<Readonly<Record<string, Pick<Texts, 'title' | 'complaint' | 'deliver'>>>>
  >;
  export const ofJob: ByScenario<Pick<Texts, 'owner' | 'papers' | 'hints'>>;
  export const afterJob: ByScenario<string>;
  export const law: ByLanguage<() => Promise<Readonly<Record<string, import('./schema/lawWords').LawWords>>>>;
}
