import katex from 'katex';
import { defineHastPlugin, htmlToHast } from 'satteri';

/** A formula of this many letters in a line of text may not fit a phone, where text is large. */
const LONG = 10;

/**
 * Typesets one formula as MathML, which every current browser renders natively: no styles or fonts
 * of its own, and a screen reader can read it. Invalid TeX throws, and so fails the build.
 */
export const typeset = (tex, displayMode = true) => {
  const whole = katex.renderToString(tex.trim(), {
    displayMode,
    output: 'mathml',
    throwOnError: true,
    strict: 'error',
  });
  // Nobody reads the TeX annotation, and it weighs as much again; HTML needs no namespace.
  // Translation would replace letters with words, or with elements that a formula cannot contain.
  const html = whole
    .replace(/<\/?semantics>|<annotation[\s\S]*?<\/annotation>| xmlns="[^"]*"/g, '')
    .replace('<math', '<math translate="no"');
  // On a phone a long formula scrolls in a box, which must be focusable. The box is labelled,
  // because a label on the formula itself would be read instead of it.
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
