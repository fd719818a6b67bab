/** What goes into the foaming solution, in order: what froths in the tank is lost to the lance. */
export const solutionOrder = ({ glycerolMass }: { readonly glycerolMass: number }): string =>
  glycerolMass > 0 ? 'water, glycerol, concentrate' : 'water, concentrate';
