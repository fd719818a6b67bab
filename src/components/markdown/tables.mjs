import { defineHastPlugin } from 'satteri';

/**
 * Puts each table of a chapter in a box of its own, which scrolls where the page is narrow. It is called as the heading
 * above it, a second one under that with its number; and each cell of its head says that it is of a column.
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
