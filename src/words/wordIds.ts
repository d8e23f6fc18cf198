/** Generated from shared/words/en by `npm run words`; do not edit. Word id -> names of its placeholders. */
import type { AimsWords } from './ids/aims';
import type { AppWords } from './ids/app';
import type { BayWords } from './ids/bay';
import type { CarCardWords } from './ids/carCard';
import type { CautionWords } from './ids/caution';
import type { CheckWords } from './ids/check';
import type { CliWords } from './ids/cli';
import type { CodesWords } from './ids/codes';
import type { CommandWords } from './ids/command';
import type { DebriefWords } from './ids/debrief';
import type { DrillWords } from './ids/drill';
import type { FaultsWords } from './ids/faults';
import type { HappeningWords } from './ids/happening';
import type { HelpWords } from './ids/help';
import type { InsideWords } from './ids/inside';
import type { InstrumentWords } from './ids/instrument';
import type { LawWords } from './ids/law';
import type { LazyPlayersWords } from './ids/lazyPlayers';
import type { ListWords } from './ids/list';
import type { LoopWords } from './ids/loop';
import type { NameWords } from './ids/name';
import type { PanelsWords } from './ids/panels';
import type { PropertiesWords } from './ids/properties';
import type { ProveWords } from './ids/prove';
import type { ProveTestsWords } from './ids/proveTests';
import type { RefusalWords } from './ids/refusal';
import type { ReportWords } from './ids/report';
import type { RulesWords } from './ids/rules';
import type { SessionWords } from './ids/session';
import type { ShelfWords } from './ids/shelf';
import type { SignsWords } from './ids/signs';
import type { StatesWords } from './ids/states';
import type { SuspectsWords } from './ids/suspects';
import type { TaskWords } from './ids/task';
import type { TwinWords } from './ids/twin';
import type { VerbsWords } from './ids/verbs';
import type { WordsWords } from './ids/words';
import type { WorkWords } from './ids/work';
import type { WorkshopWords } from './ids/workshop';
import type { WorkshopCarWords } from './ids/workshopCar';

export interface WordParameters
  extends AimsWords,
    AppWords,
    BayWords,
    CarCardWords,
    CautionWords,
    CheckWords,
    CliWords,
    CodesWords,
    CommandWords,
    DebriefWords,
    DrillWords,
    FaultsWords,
    HappeningWords,
    HelpWords,
    InsideWords,
    InstrumentWords,
    LawWords,
    LazyPlayersWords,
    ListWords,
    LoopWords,
    NameWords,
    PanelsWords,
    PropertiesWords,
    ProveWords,
    ProveTestsWords,
    RefusalWords,
    ReportWords,
    RulesWords,
    SessionWords,
    ShelfWords,
    SignsWords,
    StatesWords,
    SuspectsWords,
    TaskWords,
    TwinWords,
    VerbsWords,
    WordsWords,
    WorkWords,
    WorkshopWords,
    WorkshopCarWords {}

export type WordId = keyof WordParameters;
