import { defineHastPlugin } from 'satteri';

/**
 * Puts each table of a chapter in a box that scrolls on a narrow page. It is labelled with the
 * heading above it; a second one under that heading gets a number. Each cell of its head is marked
 * as a column header.
 */
export const scrollingTables = () => {
  let heading = '';
  let under = 0;
  const begin = (/** @type {string} */ name) => {
    heading = name;
    under = 0;
  };
  return defineHastPlugin({
    name: 'scrolling-tables',
    before: () => begin('Table'),
    element: {
      filter: ['h2', 'h3', 'table', 'th'],
      visit(node, ctx) {
        if (node.tagName === 'th') return ctx.setProperty(node, 'scope', 'col');
        if (node.tagName !== 'table') return begin(ctx.textContent(node));
        under++;
        const ariaLabel = under > 1 ? `${heading}, ${under}` : heading;
        ctx.wrapNode(node, {
          type: 'element',
          tagName: 'div',
          properties: { className: ['scroll'], tabIndex: 0, role: 'group', ariaLabel },
          children: [],
        });
      },
    },
  });
};
