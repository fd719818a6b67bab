/** Where the density of a foam that is only assumed lies on the bench, so that what takes it can say so. */
export const ASSUMED_FOAM = 'foam.assumed';
