import { defineHastPlugin } from 'satteri';

/** Chapters link from the root (`/foam/weighing/`); the site may live below a base path. */
export const baseLinks = (base) => {
  const prefix = base.replace(/\/$/, '');
  return defineHastPlugin({
    name: 'base-links',
    element: {
      filter: ['a'],
      visit(node, ctx) {
        const href = node.properties?.href;
        if (prefix && typeof href === 'string' && href.startsWith('/') && !href.startsWith('//'))
          ctx.setProperty(node, 'href', prefix + href);
      },
    },
  });
};
