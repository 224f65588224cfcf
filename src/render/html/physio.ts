// The page for whoever treats the athletes: a section for each with something to tell. It names reasons of health, and
// is not for the wall.

import { CAUTIONS } from '../../report/cautions.ts';
import type { PhysioPage, PhysioPerson } from '../../report/physio-page.ts';
import { h, name, names } from './element.ts';
import type { Content, Element } from './element.ts';

/** The sections in order, made one at a time: whoever has something to tell, then the names of the others. */
export function* physioSections(page: PhysioPage): Iterable<Element> {
  yield h(
    'header',
    {},
    h('h1', {}, `${page.title}: for the physio`),
    h('p', {}, h('b', {}, 'Not for the wall: it names reasons of health.'), ` Sheet ${page.mark}`),
  );
  for (const person of page.people) yield personSection(person);
  if (page.people.length === 0) yield h('p', {}, 'No limit, no return and no pain on record.');
  if (page.others.length > 0) {
    yield h('section', {}, h('h2', {}, 'Nothing to tell'), h('p', {}, names(page.others)));
  }
  yield h('footer', { class: 'small' }, CAUTIONS.join(' '));
}

function personSection({ name: person, limits, stages, closed, pain }: PhysioPerson): Element {
  return h(
    'section',
    { class: 'person' },
    h('h2', {}, name(person)),
    h(
      'dl',
      {},
      stages.length === 0 ? null : entry('Return', stages),
      limits.length === 0
        ? null
        : entry(
            'Barred',
            limits.map(({ when, what, because }) => `${when}: ${what} (${because})`),
          ),
      closed.length === 0
        ? null
        : entry(
            'Not signed off',
            closed.map(({ what, opens }) => `${what} (opens with ${opens})`),
          ),
      pain.length === 0
        ? null
        : entry(
            'Pain, next morning',
            pain.map(({ day, pain: of, note }) => `${day}: ${of}${note === '' ? '' : `, ${note}`}`),
          ),
    ),
  );
}

const entry = (title: string, lines: readonly string[]): Content => [
  h('dt', {}, title),
  h(
    'dd',
    {},
    h(
      'ul',
      {},
      lines.map((line) => h('li', {}, line)),
    ),
  ),
];
