/** The site that is tested and measured: a folder of its own, and a base path as on a project page. */
export const tested = { into: '.build/tested', base: '/slurry/' };
