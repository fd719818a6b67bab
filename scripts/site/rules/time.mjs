/** The most a build may take, s: everyone who changes a word waits for it. */
export const MOST_SECONDS = 30;

/**
 * @param {number} seconds
 * @returns {string[]}
 */
export const timeFaults = (seconds) =>
  seconds > MOST_SECONDS
    ? [`The build took ${seconds.toFixed(1)} s, more than ${MOST_SECONDS}`]
    : [];
