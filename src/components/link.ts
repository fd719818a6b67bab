/** The address of a page of ours under the base path: `link('foam/weighing/')`. */
export const link = (path: string): string =>
  `${import.meta.env.BASE_URL.replace(/\/$/, '')}/${path.replace(/^\//, '')}`;
