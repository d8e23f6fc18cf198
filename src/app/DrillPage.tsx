/** The port drill as a page of its own: a bay, a question, a trace, an answer, the next bay. Loaded when it is asked for. */
import './styles/drillPage.css';
import { createEffect, createSignal, type JSX, onCleanup, onMount } from 'solid-js';
import { createDrillView, type DrillView, type DrillZoom } from '../bay/drill/drillView';
import { answerOf } from '../layout/drill/answerOf';
import type { DrillLevel } from '../layout/drill/drill';
import { drillBay } from '../layout/drill/drillBay';
import { coverOver, joins } from '../layout/drill/joins';
import { type NextBay, nextBay } from '../layout/drill/nextBay';
import { afterAnswer, kindOf } from '../layout/drill/repetition';
import { IconButton, Segmented } from '../panels/controls';
import { DrillPanel } from '../panels/drill/DrillPanel';
import { TopBar } from '../panels/TopBar';
import { word } from '../words/words';
import { type DrillAsked, freshSeed } from './address';
import { drillProgress, keepDrillProgress } from './drillProgress';
import { drillShown } from './drillShown';
import { settings } from './settings';

export interface DrillPageProps {
  readonly asked: DrillAsked;
  readonly onHome: () => void;
  readonly onMenu: () => void;
  readonly onHelp: () => void;
}

const LEVELS: readonly DrillLevel[] = [1, 2, 3, 4];

export default function DrillPage(props: DrillPageProps): JSX.Element {
  const [progress, setProgress] = createSignal(drillProgress());
  const [level, setLevel] = createSignal<DrillLevel>(props.asked.level ?? progress().level);
  const fresh = (): NextBay => nextBay(progress().repetition, level(), freshSeed());
  const [now, setNow] = createSignal<NextBay>(
    props.asked.seed === null ? fresh() : { bay: drillBay(props.asked.seed, level()), comesBack: false },
  );
  const [traced, setTraced] = createSignal<readonly string[]>([]);
  const [lifted, setLifted] = createSignal<readonly string[]>([]);
  const [isBroken, setBroken] = createSignal(false);
  const [chosen, setChosen] = createSignal<string | null>(null);
  const [past, setPast] = createSignal<readonly boolean[]>([]);
  let host: HTMLDivElement | undefined;
  let view: DrillView | null = null;

  const open = (next: NextBay): void => {
    setTraced([]);
    setLifted([]);
    setBroken(false);
    setChosen(null);
    setNow(next);
  };
  const follow = (id: string): void => {
    if (chosen() !== null) return;
    const { bay } = now();
    if (bay.covers.some((cover) => cover.id === id)) {
      setLifted((before) => [...before, id]);
      return;
    }
    if (coverOver(bay, id, lifted()) !== null) return;
    const before = traced();
    const at = before.indexOf(id);
    const last = before[before.length - 1];
    const isOn = last === undefined || joins(bay, last).includes(id);
    setBroken(at < 0 && !isOn);
    setTraced(at >= 0 ? before.slice(0, at + 1) : isOn ? [...before, id] : [id]);
  };
  const choose = (choice: string): void => {
    const { bay } = now();
    const isRight = choice === answerOf(bay).right;
    const next = {
      level: level(),
      repetition: afterAnswer(progress().repetition, kindOf(bay), isRight),
    };
    setProgress(next);
    keepDrillProgress(next);
    setPast((before) => [...before, isRight]);
    setLifted(bay.covers.map(({ id }) => id));
    setChosen(choice);
  };
  const goToNext = (): void => {
    open(fresh());
    document.querySelector<HTMLElement>('#drill-question')?.focus();
  };
  const goToLevel = (next: DrillLevel): void => {
    setLevel(next);
    keepDrillProgress({ ...progress(), level: next });
    open(fresh());
  };
  onMount(() => {
    if (!host) return;
    view = createDrillView(host, word('drill.drawing'), follow);
    createEffect(() => view?.setDark(isDark()));
    createEffect(() => view?.show(drillShown(now().bay, lifted(), traced(), chosen() !== null)));
  });
  onCleanup(() => view?.dispose());
  const zoom = (step: DrillZoom) => (): void => view?.zoom(step);
  return (
    <>
      <TopBar title={word('drill.title')} onHome={props.onHome} onHelp={props.onHelp} onMenu={props.onMenu}>
        <Segmented
          label={word('drill.levels')}
          options={LEVELS.map((one) => ({ value: one, label: String(one) }))}
          value={level()}
          onChoose={goToLevel}
        />
        <span class="s mut hide-s">{word(`drill.levelNote.l${level()}`)}</span>
        <span class="sp" />
        <span class="s mut hide-s">{word('drill.noClock')}</span>
      </TopBar>
      <main class="drillp" id="main">
        <section class="dview" aria-label={word('drill.drawing')} data-region tabIndex={-1}>
          <div class="dhost" ref={host} />
          <div class="dzoom" role="group" aria-label={word('drill.view')}>
            <IconButton icon="zin" label={word('drill.zoomIn')} onPress={zoom('nearer')} />
            <IconButton icon="zout" label={word('drill.zoomOut')} onPress={zoom('farther')} />
            <IconButton icon="fit" label={word('drill.zoomWhole')} onPress={zoom('whole')} />
          </div>
        </section>
        <DrillPanel
          bay={now().bay}
          comesBack={now().comesBack}
          past={past()}
          chosen={chosen()}
          traced={traced()}
          lifted={lifted()}
          isBroken={isBroken()}
          onChoose={choose}
          onFollow={follow}
          onClear={() => {
            setTraced([]);
            setBroken(false);
          }}
          onNext={goToNext}
        />
      </main>
    </>
  );
}

function isDark(): boolean {
  const { look } = settings();
  return look === 'auto' ? matchMedia('(prefers-color-scheme: dark)').matches : look === 'dark';
}
