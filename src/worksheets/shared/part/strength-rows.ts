import type { StrengthBand } from '../../../core/finished/strength-band.ts';
import type { Say } from '../../../islands/engine/say.ts';

type Relations = StrengthBand['relations'];

/** Short names of the sources of strengths. */
const NAMES: Readonly<Record<string, string>> = {
  'caltrans-19-10': 'California, classes',
  'astm-c869': 'ASTM C869, standard batch',
  'aci-229r-99': 'ACI 229R, classes',
  'bca-1994': 'BCA 1994, table',
  'aci-523-1r': 'ACI 523.1R, neat cement',
  'is-2185-4': 'IS 2185-4, blocks',
  'kado-2018': 'Kado 2018, sanded',
};
export const strengthName = ({ source, where }: Relations[number]) => NAMES[source] ?? where;

/** The caption and head of a table of the strengths that each source gives at a density. */
export const STRENGTH_TABLE = {
  caption: 'What each source says at this density',
  columns: ['Source', 'Density', 'Strength', 'Standing'],
};

/** The rows of that table. */
export const strengthRows = (relations: Relations, say: Say): string[][] =>
  relations.map((relation) => {
    const [low, high] = [relation.low, relation.high].map(
      (of) => of !== null && say(of, 'stress', { significant: 2 }),
    );
    return [
      strengthName(relation),
      relation.against === 'wet' ? 'wet' : 'oven-dry',
      high ? `${low} to ${high}` : `at least ${low}`,
      relation.standing,
    ];
  });
