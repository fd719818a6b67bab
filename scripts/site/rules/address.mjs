// Whether one address on a page leads somewhere.

/**
 * @typedef {object} Site
 * @property {string} base    the base path the site is served under, with slashes at both ends
 * @property {string} host    its origin
 * @property {ReadonlySet<string>} files  every file, as paths from the base path on
 * @property {ReadonlyMap<string, ReadonlySet<string | undefined>>} ids  the ids of each page, by
 *   file
 */

/**
 * The fault of an address, or nothing.
 * @param {string} address  as written in the page
 * @param {URL} here        the page's own address
 * @param {boolean} loads   whether the browser fetches it unasked
 * @param {Site} site
 * @returns {string | undefined}
 */
export function addressFault(address, here, loads, site) {
  if (loads && /^(data|blob):/.test(address)) return undefined;
  const url = URL.parse(address, here);
  if (!url) return `has a link that is no address: ${address}`;
  if (!/^https?:$/.test(url.protocol)) {
    const apt = !loads && /^(mailto|tel):$/.test(url.protocol);
    return apt ? undefined : `has a link of kind ${url.protocol}`;
  }
  if (url.origin !== site.host) {
    return loads ? `loads something from another host: ${address}` : undefined;
  }
  if (!url.pathname.startsWith(site.base)) return `links out of the base path: ${address}`;
  return targetFault(address, url, site);
}

/**
 * Whether the page and the anchor within the site exist.
 * @param {string} address
 * @param {URL} url
 * @param {Site} site
 * @returns {string | undefined}
 */
function targetFault(address, url, { base, files, ids }) {
  const path = decodeURIComponent(url.pathname.slice(base.length));
  const file = path === '' || path.endsWith('/') ? `${path}index.html` : path;
  if (!files.has(file)) {
    const slash = files.has(`${path}/index.html`) ? ' (it lacks the slash at its end)' : '';
    return `links to a page that is not there: ${address}${slash}`;
  }
  const anchor = decodeURIComponent(url.hash.slice(1));
  // The fragment of a link may carry a batch: that is state, not an anchor.
  if (!anchor || anchor.includes('=')) return undefined;
  const known = ids.get(file);
  if (!known || known.has(anchor)) return undefined;
  return `links to an anchor that is not there: ${address}`;
}
