/**
 * The bench key that marks a foam density as assumed, not weighed. Worksheets that use the density
 * read it in order to say so.
 */
export const ASSUMED_FOAM = 'foam.assumed';
