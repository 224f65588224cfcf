// A whole HTML document around a page: language, title, stylesheet, nothing from elsewhere. Written in pieces, so that a
// page of many sheets never stands in memory whole.

import { h as createElement } from 'preact';
import { render } from 'preact-render-to-string';
import { h } from './element.ts';
import type { Element } from './element.ts';
import type { Paper } from './paper.ts';
import { stylesheet } from './styles.ts';
import type { PageKind } from './styles.ts';

export interface PageFrame {
  readonly title: string;
  readonly paper: Paper;
  readonly kind: PageKind;
  /** Where the page that leads to all others is; absent for a page alone. */
  readonly home?: string;
}

/** Everything before the page's own content. A list has a heading of its own; other pages one that is only heard. */
export function pageStart({ title, paper, kind, home }: PageFrame): string {
  const head = h(
    'head',
    {},
    h('meta', { charset: 'utf-8' }),
    h('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    h('title', {}, title),
    createElement('style', { dangerouslySetInnerHTML: { __html: stylesheet(paper, kind) } }),
  );
  const back = home === undefined ? '' : piece(h('nav', { class: 'on-screen' }, h('a', { href: home }, 'All pages')));
  const heading = kind === 'list' || kind === 'review' ? '' : piece(h('h1', { class: 'unseen' }, title));
  return `<!DOCTYPE html>\n<html lang="en">\n${render(head)}\n<body>\n${back}<main>\n${heading}`;
}

export const PAGE_END = '</main>\n</body>\n</html>\n';

/** One piece of a page, on lines of its own. */
export const piece = (content: Element): string => `${render(content)}\n`;

/** A page of these contents. */
export function* page(frame: PageFrame, contents: Iterable<Element>): Iterable<string> {
  yield pageStart(frame);
  for (const content of contents) yield piece(content);
  yield PAGE_END;
}
