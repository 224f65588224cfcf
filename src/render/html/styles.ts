// The stylesheet every page carries whole, so that a page stands alone and is the same on paper and on a screen. Black on
// white throughout: what matters is told by a word, and a pattern beside it, never by colour.

import { SHARES, ZOOMS } from './board-layout.ts';
import { BOARD_MEASURES } from './board-measures.ts';
import { CARD_MEASURES, cardSpace } from './card-layout.ts';
import { MARGIN, PAPERS, printable } from './paper.ts';
import type { Paper } from './paper.ts';

export type Orientation = 'portrait' | 'landscape';

const mm = (value: number): string => `${Math.round(100 * value) / 100}mm`;

/** The kinds of page, each with rules of its own. */
export type PageKind = 'cards' | 'board' | 'season' | 'list' | 'review';

/** How a page of the kind lies: what is read from afar is wide. */
export const orientationOf = (kind: PageKind): Orientation =>
  kind === 'board' || kind === 'season' ? 'landscape' : 'portrait';

/** The rules of every page, then those of its kind. */
export function stylesheet(paper: Paper, kind: PageKind): string {
  return `${base(paper, orientationOf(kind))}${rulesOf(paper, kind)}`;
}

function rulesOf(paper: Paper, kind: PageKind): string {
  switch (kind) {
    case 'cards':
      return cardRules(paper);
    case 'board':
      return boardRules();
    case 'season':
      return SEASON_RULES;
    case 'list':
      return LIST_RULES;
    case 'review':
      return REVIEW_RULES;
  }
}

function base(paper: Paper, orientation: Orientation): string {
  const { width } = printable(paper, orientation);
  return `
@page { size: ${PAPERS[paper].name} ${orientation}; margin: ${mm(MARGIN)}; }
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
body { margin: 0; background: #fff; color: #000; font: 10pt/1.3 'Liberation Sans', Arial, Helvetica, 'DejaVu Sans', sans-serif; overflow-wrap: break-word; }
main { width: ${mm(width)}; margin: 0 auto; }
h1, h2, h3, p, ul, ol, table, dl, dd, figure { margin: 0; padding: 0; font-size: inherit; }
ul, ol { list-style: none; }
table { border-collapse: collapse; }
th { text-align: left; font-weight: bold; }
a { color: #000; text-underline-offset: 2px; }
a:focus-visible { outline: 3px solid #000; outline-offset: 3px; }
bdi { unicode-bidi: isolate; }
.unseen { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); white-space: nowrap; }
.swatch { display: inline-block; width: 9mm; height: 4.2mm; vertical-align: -0.8mm; margin-right: 1.5mm; }
.group { white-space: nowrap; font-weight: bold; text-transform: uppercase; letter-spacing: 0.02em; }
.small { font-size: 9pt; }
@media screen { main { padding: 6mm 0; } .sheet { margin-bottom: 8mm; } }
${narrow('main { width: auto; padding: 4mm; }')}
@media print { .unseen, .on-screen { display: none; } }
`;
}

/** On a screen that isn't as wide as a sheet, as a phone's. */
const narrow = (rules: string): string => `@media screen and (max-width: 230mm) {\n${rules}\n}`;

function cardRules(paper: Paper): string {
  const m = CARD_MEASURES;
  const { half, column } = cardSpace(paper);
  const boxColumns = [1, 2, 3, 4, 5, 6, 7, 8].flatMap((across) => [
    `.across-${across} .what { width: ${mm(column - m.number - across * m.boxWidth - m.boxGap)}; }`,
    `.boxes.of-${across} { width: ${mm(across * m.boxWidth + 0.1)}; }`,
  ]);
  return `
.sheet { break-after: page; }
.sheet:last-child { break-after: auto; }
.card { min-height: ${mm(half)}; display: flex; flex-direction: column; break-inside: avoid; }
.card + .card { border-top: 1px dashed #000; margin-top: ${mm(m.cut / 2)}; padding-top: ${mm(m.cut / 2)}; }
.card header { display: flex; align-items: baseline; gap: 4mm; min-height: ${mm(m.header)}; }
.card h2 { font-size: 17pt; line-height: ${mm(m.header)}; }
.card .mark { margin-left: auto; font-size: 9pt; white-space: nowrap; }
.card .when { font-size: 12pt; font-weight: bold; white-space: nowrap; }
.card .intent { display: flex; justify-content: space-between; align-items: baseline; column-gap: ${mm(m.headerColumnGap)}; line-height: ${mm(m.purposeLine)}; }
.card .intent .small { white-space: nowrap; }
.card .purpose { font-size: 12pt; line-height: ${mm(m.purposeLine)}; }
.card .limits { font-size: 10.5pt; line-height: ${mm(m.limitLine)}; font-weight: bold; }
.card .events { font-size: 10.5pt; line-height: ${mm(m.eventLine)}; font-weight: bold; }
.card .events li { display: inline; }
.card .events li + li::before { content: ' · '; }
.card .columns { flex: 1; display: grid; grid-template-columns: repeat(2, ${mm(column)}); column-gap: ${mm(m.columnGap)}; padding-top: ${mm(m.headerGap)}; }
.card section + section { margin-top: ${mm(m.sessionGap)}; }
.card .head { display: flex; flex-wrap: wrap; justify-content: space-between; align-items: baseline; border-bottom: 2px solid #000; }
.card h3 { font-size: 11.5pt; line-height: ${mm(m.sessionLine)}; }
.card .facts, .card .goes-on { font-size: 9pt; line-height: ${mm(m.factsLine)}; }
.lines { width: 100%; table-layout: fixed; }
.lines col.number { width: ${mm(m.number)}; }
${boxColumns.join('\n')}
.lines tr { break-inside: avoid; }
.lines td, .lines tbody th { vertical-align: top; padding: 0.6mm 0; border-bottom: 1px solid #777; font-weight: normal; }
.lines td.number { font-weight: bold; font-size: 10.5pt; line-height: ${mm(m.nameLine)}; }
.lines .what { display: flex; justify-content: space-between; font-weight: bold; font-size: 10.5pt; line-height: ${mm(m.nameLine)}; }
.lines .load { white-space: nowrap; }
.lines .dose { flex: none; padding-left: ${mm(m.doseGap)}; min-width: ${mm(m.dose)}; white-space: nowrap; }
.lines .detail { font-size: 9pt; line-height: ${mm(m.detailLine)}; }
.lines .boxes { float: right; text-align: right; line-height: 0; }
.box { display: inline-block; width: ${mm(m.boxWidth - 0.8)}; height: ${mm(m.boxHeight)}; margin-left: 0.8mm; border: 1px solid #000; vertical-align: top; }
.low .box { height: ${mm(m.lowBoxHeight - 0.5)}; margin-bottom: 0.5mm; }
.ask { display: flex; align-items: center; justify-content: space-between; font-size: 9pt; height: ${mm(m.sessionFoot)}; white-space: nowrap; }
.ask .box { width: 7.5mm; height: 6mm; vertical-align: middle; }
.room { font-size: 9pt; display: flex; flex-direction: column; }
.room i { flex: 1; max-height: 9mm; border-bottom: 1px solid #777; }
.card footer { min-height: ${mm(m.footer)}; border-top: 1px solid #000; padding-top: 0.8mm; font-size: 9pt; line-height: 3.7mm; }
.card footer .stop { font-weight: bold; }
${narrow(`.card { min-height: 0; }
.card header { flex-wrap: wrap; }
.card h2 { line-height: 1.2; }
.card .mark { margin-left: 0; }
.card .intent, .card .columns { display: block; }
.card .columns > div + div { margin-top: ${mm(m.sessionGap)}; }
.lines .what { width: auto; }
.card .ask { flex-wrap: wrap; height: auto; }
.card .room { display: none; }`)}
`;
}

function boardRules(): string {
  const m = BOARD_MEASURES;
  return `
.board { break-after: page; }
.board:last-child { break-after: auto; }
${ZOOMS.map((zoom) => `.zoom-${zoom} { zoom: ${zoom / 100}; }`).join('\n')}
.beside { display: grid; grid-template-columns: 1fr ${mm(m.side)}; column-gap: ${mm(m.sideGap)}; row-gap: ${mm(m.gap)}; align-items: start; }
.beside > header, .beside > .cues, .beside > footer { grid-column: 1 / -1; }
.board > header { display: flex; flex-wrap: wrap; align-items: baseline; column-gap: ${mm(m.factsLine)}; border-bottom: 2px solid #000; }
.board h2 { font-size: 18pt; line-height: ${mm(m.titleLine)}; }
.board .facts { font-size: 11pt; line-height: ${mm(m.factsLine)}; }
.board h3 { font-size: 10.5pt; line-height: ${mm(m.headLine)}; break-after: avoid; }
.timetable { width: 100%; table-layout: fixed; }
.timetable th, .timetable td { border: 1px solid #555; padding: ${mm(m.padding / 2)} ${mm(m.padding)}; vertical-align: top; }
.timetable tr { break-inside: avoid; }
.timetable .minutes { width: ${mm(m.minutes)}; white-space: nowrap; font-size: 11pt; line-height: ${mm(m.minutesLine)}; }
.timetable .usual { font-weight: normal; font-size: 9pt; line-height: ${mm(m.smallLine)}; white-space: normal; }
.timetable .people { font-weight: normal; font-size: 9pt; line-height: ${mm(m.smallLine)}; }
.timetable td { font-size: 10pt; line-height: ${mm(m.textLine)}; }
.sets { white-space: nowrap; }
.timetable .differs, .at { font-size: 9pt; white-space: nowrap; }
.timetable .who { font-size: 9.5pt; }
.timetable .exercise + .exercise { border-top: 1px dotted #555; margin-top: 0.4mm; padding-top: 0.4mm; }
.timetable + .timetable { margin-top: 3mm; }
.own { margin-top: ${mm(m.gap)}; }
.own li { font-size: 10pt; line-height: ${mm(m.textLine)}; break-inside: avoid; }
.stations { margin-top: ${mm(m.gap)}; break-inside: avoid; }
.bars { display: grid; grid-template-columns: repeat(${m.stationsAcross}, 1fr); column-gap: ${mm(m.stationGap)}; align-items: start; }
${[1, 2, 3, 4].map((columns) => `.columns-${columns} { grid-column: span ${columns}; }\n.columns-${columns} > ul { grid-template-columns: repeat(${columns}, 1fr); }`).join('\n')}
.stations > ul { display: grid; gap: ${mm(m.stationGap)}; }
.stations > ul > li { border: 1px solid #000; padding: ${mm(m.padding / 2)} ${mm(m.padding)}; break-inside: avoid; line-height: ${mm(m.stationLine)}; }
.stations ol li { font-size: 10pt; line-height: ${mm(m.stationLine)}; }
.stations ol li + li { border-top: 1px dotted #555; }
.stations ol .small { line-height: ${mm(m.smallLine)}; }
.blank { display: inline-block; width: 14mm; border-bottom: 1px solid #000; }
.reminders { margin-top: ${mm(m.gap)}; font-size: 9.5pt; line-height: ${mm(m.cueLine)}; }
.reminders dt { font-weight: bold; font-size: 10.5pt; margin-top: 1mm; border-bottom: 1px solid #000; break-after: avoid; }
.across { display: flex; column-gap: ${mm(m.remindersGap)}; }
.across > * { flex: 1; }
.across > .reminders { display: grid; grid-template-columns: repeat(3, 1fr); column-gap: ${mm(m.remindersGap)}; }
${SHARES.map((share) => `.share-${10 * share} > .reminders { flex: ${share}; }`).join('\n')}
.share-0 { display: block; }
.reminders li { break-inside: avoid; padding-left: 2.5mm; text-indent: -2.5mm; }
.roll .lists > table { width: 100%; table-layout: fixed; margin-bottom: 1mm; break-inside: avoid; }
.roll th, .roll td { font-size: 10pt; padding: 0.3mm 0; border-bottom: 1px solid #777; }
.roll tbody th { font-weight: normal; line-height: 4.2mm; }
.roll .group { white-space: normal; font-size: 9pt; overflow-wrap: anywhere; }
.roll .swatch { width: 6mm; }
.roll .tick { width: 8.5mm; text-align: center; font-size: 9pt; }
.roll .box { width: 7.5mm; height: 4.9mm; vertical-align: middle; border: 1px solid #000; display: inline-block; }
.listed .lists { columns: ${m.rollColumns} ${mm(m.rollColumn)}; column-gap: ${mm(m.rollGap)}; }
.listed .lists > .long { break-inside: auto; }
.listed tr { break-inside: avoid; }
.cues { break-inside: avoid; }
.board > * + .cues, .board > .bars, .board > .listed, .board > .across { margin-top: ${mm(m.gap)}; }
.cues li { font-size: 9.5pt; line-height: ${mm(m.cueLine)}; }
.elsewhere { font-size: 10pt; font-weight: bold; line-height: ${mm(m.cueLine)}; margin-top: ${mm(m.gap)}; }
.board > footer { break-before: avoid; border-top: 1px solid #000; line-height: ${mm(m.smallLine)}; padding-top: 0.6mm; margin-top: ${mm(m.gap)}; }
.beside > footer { margin-top: 0; }
${narrow(`.board { zoom: 1; }
.beside, .across, .bars, .across > .reminders { display: block; }
.timetable { min-width: 190mm; }
.timetable .minutes { position: sticky; left: 0; background: #fff; width: 22mm; }
.listed .lists { columns: 1; }
.bars .stations > ul { grid-template-columns: 1fr; }`)}
`;
}

const SEASON_RULES = `
.chart { break-after: page; }
.chart h2 .small { margin-left: 3mm; font-weight: normal; }
.chart h2 { font-size: 20pt; line-height: 9mm; height: 10mm; }
.chart h2.long { font-size: 11pt; line-height: 5mm; overflow: hidden; }
.drawing { display: block; width: 100%; font-family: inherit; }
.outline { fill: none; stroke: #000; stroke-width: 0.3; }
.outline.heavy { stroke-width: 0.7; }
.outline.white { fill: #fff; }
.key { font-size: 9pt; line-height: 3.8mm; margin-top: 1mm; }
.lists h2 { font-size: 14pt; margin-bottom: 2mm; }
.lists h3, caption { font-size: 12pt; font-weight: bold; text-align: left; margin: 2mm 0 0.5mm; break-after: avoid; }
.lists li { break-inside: avoid; }
.side-by-side { columns: 3; column-gap: 8mm; }
.side-by-side > section { break-inside: avoid; }
.numbers { margin-top: 4mm; width: 100%; break-inside: avoid; }
.numbers.long { break-inside: auto; }
.numbers th, .numbers td { border-bottom: 1px solid #777; padding: 0.5mm 3mm 0.5mm 0; }
.numbers tr { break-inside: avoid; }
${narrow(`.chart h2 { height: auto; line-height: 1.2; }
.drawing { width: 240mm; }
.side-by-side { columns: 1; }`)}
`;

const REVIEW_RULES = `
h1 { font-size: 16pt; line-height: 8mm; }
h2 { font-size: 12pt; line-height: 6mm; margin-top: 3mm; border-bottom: 2px solid #000; break-after: avoid; }
.facts { font-weight: bold; }
.decisions { counter-reset: decision; }
.decisions li { position: relative; counter-increment: decision; padding: 1mm 12mm 1mm 8mm; border-bottom: 1px solid #777; break-inside: avoid; }
.decisions li::before { content: counter(decision); position: absolute; left: 0; width: 6mm; font-weight: bold; font-size: 12pt; }
.decisions .box { position: absolute; right: 1mm; width: 7mm; height: 6mm; border: 1px solid #000; }
.place { display: inline-block; font-size: 9pt; color: #333; overflow-wrap: anywhere; margin-left: 2mm; }
.line .place { margin-left: 0; }
.plain .who { width: 32mm; overflow-wrap: anywhere; }
.plain .line { width: 42mm; }
.plain { width: 100%; }
.plain th, .plain td { vertical-align: top; border-bottom: 1px solid #777; padding: 0.5mm 2mm 0.5mm 0; }
.plain tbody th { font-weight: normal; min-width: 18mm; overflow-wrap: anywhere; }
.plain .number { text-align: right; white-space: nowrap; }
.plain tr, li, .note { break-inside: avoid; }
.note { font-size: 9pt; line-height: 3.7mm; margin-top: 0.8mm; }
footer { margin-top: 4mm; border-top: 1px solid #000; padding-top: 1mm; }
${narrow('.plain .who, .plain .line { width: auto; }')}
`;

const LIST_RULES = `
h1 { font-size: 18pt; line-height: 9mm; }
h2 { font-size: 13pt; line-height: 7mm; margin-top: 4mm; break-after: avoid; }
.row li { display: inline-block; margin-right: 5mm; }
.plain { width: 100%; }
.plain th, .plain td { text-align: left; vertical-align: top; border-bottom: 1px solid #777; padding: 0.8mm 3mm 0.8mm 0; }
.plain tr, .found li, .person { break-inside: avoid; }
dt { font-weight: bold; margin-top: 1mm; }
dd { margin-left: 5mm; }
footer { margin-top: 4mm; border-top: 1px solid #000; padding-top: 1mm; }
`;
