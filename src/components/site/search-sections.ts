import { keptTogether } from '../markdown/kept-together.ts';
import { inBritish, plain } from './search-words.ts';

/** What the index returns for one page. */
export interface Found {
  readonly url: string;
  readonly excerpt: string;
  readonly content: string;
  readonly meta: {
    readonly title?: string;
    readonly chapter?: string;
    readonly keywords?: string;
    readonly summary?: string;
    /** The sections that answer certain words or phrases, whatever else is found, as JSON. */
    readonly answers?: string;
  };
  readonly anchors: readonly { readonly id: string; readonly text: string }[];
  readonly sub_results: readonly Section[];
}
interface Section {
  readonly url: string;
  readonly title: string;
  readonly excerpt: string;
}

/** Whether the excerpt is only the page's list of keywords, which is not meant to be read. */
export function isKeywords(excerpt: string, { meta }: Found): boolean {
  const text = excerpt.replaceAll(/<\/?mark>|…/g, '');
  const start = text.split(',')[1]?.trim();
  return Boolean(start && meta.keywords?.includes(start));
}

/**
 * A unit at the beginning of an excerpt, or a number at its end: a quantity that was cut in two.
 */
const HALVES =
  /(?<=^… )(?:(?:\(\d[^\s<]*|[^\s<]*[°%/²³·][^\s<]*|(?:[kM]?g|m?L|[cm]?m|lb|oz|in|ft|gal|min|[hds]|[kM]?Pa|psi)[.,;:)]*) )+| [(~±≤≥<]*\d[\d.,–−]*(?= …$)/gu;

/** An excerpt without halves of quantities, and each whole one on one line, as on its page. */
export const wholly = (excerpt: string): string => keptTogether(excerpt.replaceAll(HALVES, ''));

/**
 * The section declared for what was asked, else the one with most of its words. The keyword list
 * does not count.
 */
export function bestSection(page: Found, asked: string): Section | undefined {
  const named = namedSection(page, asked);
  if (named) return named;
  const marks = ({ excerpt }: Section) =>
    new Set(excerpt.toLowerCase().match(/<mark>.*?<\/mark>/g)).size;
  const read = page.sub_results.filter(({ excerpt }) => !isKeywords(excerpt, page));
  return read.toSorted((a, b) => marks(b) - marks(a))[0] ?? page.sub_results[0];
}

function namedSection(page: Found, asked: string): Section | undefined {
  const answers: Record<string, string[]> = JSON.parse(page.meta.answers ?? '{}');
  const spelt = (text: string) => ` ${plain(text).map(inBritish).join(' ')} `;
  const words = spelt(asked);
  const id = Object.keys(answers).find((id) =>
    answers[id]!.some((phrase) => words.includes(spelt(phrase))),
  );
  if (!id) return;
  const url = `${page.url}#${id}`;
  return (
    page.sub_results.find((section) => section.url === url) ?? {
      url,
      title: page.anchors.find((anchor) => anchor.id === id)?.text ?? '',
      excerpt: '',
    }
  );
}
