/** The workshop as a page of its own, loaded when asked for: the bar at the top, below it what is written and what it does. */
import './styles/workshop.css';
import './styles/workshopFound.css';
import './styles/workshopForm.css';
import './styles/workshopCar.css';
import './styles/workshopProof.css';
import { createMemo, type JSX, Show } from 'solid-js';
import { proofMarkup } from '../export/proof/proofMarkup';
import { causeName, readingText, testName, testNameWithTime, toolName } from '../export/proof/written';
import { writerOf } from '../instruments/evidenceUnits';
import { TopBar } from '../panels/TopBar';
import type { Mode } from '../session/corePort';
import { shownMarks } from '../units/format';
import { spokenLanguage, word } from '../words/words';
import type { CarLinks } from '../workshop/carLinks';
import { Workshop } from '../workshop/Workshop';
import { createWork } from '../workshop/work';
import { language } from './language';
import { ProofSheet } from './ProofSheet';
import { proofStore } from './proofStore';
import { readyOwn } from './readyOwn';
import { saveFile } from './saveFile';
import { shelfFacts } from './scenarioFacts';
import { settings } from './settings';

export interface WorkshopPageProps {
  /** Under menu or help: everything stays as it is. */
  readonly hidden: boolean;
  readonly onPlay: (scenarioId: string, mode: Mode) => void;
  readonly onHome: () => void;
  readonly onMenu: () => void;
  readonly onHelp: () => void;
}

export default function WorkshopPage(props: WorkshopPageProps): JSX.Element {
  const links: CarLinks = {
    async play(data, mode) {
      const id = await readyOwn(data);
      if (id !== null) props.onPlay(id, mode);
      return id !== null;
    },
    proofs: proofStore,
    ProofSheet,
    saveProof(proof) {
      const page = proofMarkup([proof], writerOf(settings().units));
      saveFile(`${proof.scenario}.proof.html`, page, 'text/html');
    },
    names: {
      cause: causeName,
      test: testName,
      testWithTime: testNameWithTime,
      tool: toolName,
      look: (value) => readingText(value, 'look'),
    },
  };
  const spoken = createMemo(
    () => ({ language: language() ?? spokenLanguage(), marks: shownMarks(), units: settings().units }),
    undefined,
    { equals: (a, b) => JSON.stringify(a) === JSON.stringify(b) },
  );
  const work = createWork(spoken, links.proofs);
  return (
    <div class="ws-page" hidden={props.hidden}>
      <Show when={language()} keyed>
        <TopBar
          title={word('workshop.title')}
          onHome={props.onHome}
          onHelp={props.onHelp}
          onMenu={props.onMenu}
        />
        <Workshop work={work} units={settings().units} links={links} examples={shelfFacts()} />
      </Show>
    </div>
  );
}
