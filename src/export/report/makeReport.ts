/** The physics on one page: every figure computed anew, beside where it can be checked. */
import { engineHash } from '../../session/engineHash';
import { word } from '../../words/words';
import type { ReportInputs } from './inputs';
import { type ReportSection, safe, sectionMarkup } from './page';
import { ambientSweep } from './sections/ambientSweep';
import { chargeSweep } from './sections/chargeSweep';
import { equalising } from './sections/equalising';
import { evacuating } from './sections/evacuating';
import { orificeFlow } from './sections/orificeFlow';
import { properties } from './sections/properties';
import { pullDown } from './sections/pullDown';
import { recovering } from './sections/recovering';
import { signSection } from './sections/signSection';

type MakeSection = (inputs: ReportInputs) => ReportSection;

/** In the order of the page, by id. */
export const REPORT_SECTIONS: Readonly<Record<string, MakeSection>> = {
  weather: ambientSweep,
  charge: chargeSweep,
  'pull-down': pullDown,
  equalising,
  recovering,
  evacuating,
  signs: signSection,
  orifice: orificeFlow,
  properties,
};

const STYLE = `
body { font: 15px/1.45 system-ui, sans-serif; color: #1b1b1b; max-width: 1120px; margin: 2rem auto; padding: 0 1rem; }
h1 { font-size: 1.6rem } h2 { font-size: 1.2rem; margin-top: 2.2rem; border-top: 1px solid #999; padding-top: .8rem }
.figures { display: flex; flex-wrap: wrap; gap: 1rem } figure { margin: 0 } svg { width: 520px; max-width: 100%; height: auto }
svg text { font-size: 11px; fill: #1b1b1b } svg .t { font-size: 13px; font-weight: 600 } .grid { stroke: #d9d9d9 }
.l { fill: none; stroke-width: 1.8 } circle { fill: none; stroke-width: 1.4 } .limit { stroke: #1b1b1b; stroke-dasharray: 1 4 }
.band { fill: #e9dfc4; stroke: #9a8a5a; stroke-width: .6; fill-opacity: .6 } .bar { stroke: #9a8a5a; stroke-width: 6 }
table { border-collapse: collapse; font-size: 12.5px } th, td { border: 1px solid #bbb; padding: .2rem .45rem; text-align: left } td { white-space: nowrap } td:last-child, td:first-child { white-space: normal }
.source { color: #444; font-size: 13px } @media print { section { break-inside: avoid-page } }
`;

/** Called with the id of each section before it is computed: some take minutes. */
export type OnSection = (id: string) => void;

/** `only`: ids of sections; all of them when not given. Throws `RangeError` for an id there is not. */
export function makeReport(
  inputs: ReportInputs,
  only: readonly string[] = Object.keys(REPORT_SECTIONS),
  onSection: OnSection = () => {},
): string {
  const unknown = only.find((id) => !Object.hasOwn(REPORT_SECTIONS, id));
  if (unknown !== undefined)
    throw new RangeError(`no section "${unknown}"; there is ${Object.keys(REPORT_SECTIONS).join(', ')}`);
  const sections = only.map((id) => {
    onSection(id);
    return REPORT_SECTIONS[id](inputs);
  });
  const contents = sections
    .map(({ id, title }) => `<li><a href="#${safe(id)}">${safe(title)}</a></li>`)
    .join('');
  return [
    '<!doctype html><html lang="en"><head><meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<title>${safe(word('report.title'))}</title><style>${STYLE}</style></head><body>`,
    `<h1>${safe(word('report.title'))}</h1><p>${safe(word('report.about', { engine: engineHash }))}</p>`,
    `<ol>${contents}</ol>`,
    ...sections.map(sectionMarkup),
    '</body></html>\n',
  ].join('\n');
}
