/**
 * The most water that cement keeps in suspension, as a ratio by mass. Common practice, no source.
 * @source common-practice
 */
export const MOST_WATER_CEMENT = 2;
