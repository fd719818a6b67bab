import { defineHastPlugin } from 'satteri';

/** Puts each table of a chapter in a box of its own, which scrolls where the page is narrow. */
export const scrollingTables = () =>
  defineHastPlugin({
    name: 'scrolling-tables',
    element: {
      filter: ['table'],
      visit(node, ctx) {
        ctx.wrapNode(node, {
          type: 'element',
          tagName: 'div',
          properties: { className: ['scroll'], tabIndex: 0, role: 'group', ariaLabel: 'Table' },
          children: [],
        });
      },
    },
  });
