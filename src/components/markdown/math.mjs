import katex from 'katex';
import { defineHastPlugin, htmlToHast } from 'satteri';

/** So many letters in a line of text may not fit a phone, where they are large. */
const LONG = 10;

/**
 * Typesets one formula as MathML, which every current browser draws itself: no styles, no fonts
 * of its own, and a screen reader can read it. Bad TeX throws, and so fails the build.
 */
export const typeset = (tex, displayMode = true) => {
  const whole = katex.renderToString(tex.trim(), {
    displayMode,
    output: 'mathml',
    throwOnError: true,
    strict: 'error',
  });
  // The TeX beside the formula is read by nobody, and weighs as much again; a page of HTML needs no name space.
  // A browser that translates would put words, or elements that a formula cannot hold, in place of its letters.
  const html = whole
    .replace(/<\/?semantics>|<annotation[\s\S]*?<\/annotation>| xmlns="[^"]*"/g, '')
    .replace('<math', '<math translate="no"');
  // A long formula scrolls in a box round it on a phone, and a box that scrolls is reached by key. The
  // box has the name: a name on the formula itself would be read in its place.
  const boxed = html.replace('<span ', '<span tabindex="0" role="group" aria-label="Formula" ');
  if (displayMode) return boxed;
  const long = html.replace(/<[^>]+>/g, '').length >= LONG;
  return long ? boxed.replace('"katex"', '"katex in-line"') : html;
};

const classes = (node) => [].concat(node.properties?.className ?? []);
const toHast = (tex, displayMode) =>
  htmlToHast(typeset(tex, displayMode), { fragment: true }).children[0];

/** Turns $$…$$ in the chapters into MathML at build time. */
export const mathML = () =>
  defineHastPlugin({
    name: 'math-ml',
    element: {
      filter: ['pre', 'code'],
      visit(node, ctx) {
        if (node.tagName === 'pre') {
          const code = node.children?.[0];
          if (code?.type === 'element' && classes(code).includes('language-math'))
            return toHast(ctx.textContent(code), true);
        } else if (classes(node).includes('math-inline')) {
          return toHast(ctx.textContent(node), false);
        }
      },
    },
  });
