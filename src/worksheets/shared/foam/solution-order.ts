/**
 * The order in which the parts of the foaming solution go in. Concentrate comes last, because what
 * froths in the tank never reaches the lance.
 */
export const solutionOrder = ({ glycerolMass }: { readonly glycerolMass: number }): string =>
  glycerolMass > 0 ? 'water, glycerol, concentrate' : 'water, concentrate';
