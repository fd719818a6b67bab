/** The address of a page of this site, at run time. */
export const pageAt = (path: string): string => `${document.body.dataset.base ?? '/'}${path}`;

/** The address of a batch's own page. */
export const batchAt = (id: string): string => pageAt(`batch-records/batch/#${id}`);
