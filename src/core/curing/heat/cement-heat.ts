import { demand } from '../../domain-error.ts';
import { justUnder } from '../../quantity/dust.ts';
import { demandNotNegative, demandPositive } from '../bounds.ts';

/** Oxides of a cement, mass fractions 0…1. */
export interface Oxides {
  readonly cao: number;
  readonly sio2: number;
  readonly al2o3: number;
  readonly fe2o3: number;
  readonly so3: number;
  /** Uncombined lime, taken off the CaO first. */
  readonly freeLime?: number;
  readonly mgo?: number;
}

/** The calculated compounds of a cement, mass fractions 0…1. */
export interface Compounds {
  readonly c3s: number;
  readonly c2s: number;
  readonly c3a: number;
  readonly c4af: number;
  readonly so3: number;
  readonly freeLime: number;
  readonly mgo: number;
}

/**
 * The lowest Al2O3/Fe2O3 ratio for which these factors hold.
 * @source astm-c150 Annex A1, from memory
 */
const LEAST_ALUMINA = 0.64;

/**
 * Compounds of a cement by Bogue from its oxides, mass fractions.
 * C3S = 4.071·(CaO − free) − 7.600·SiO2 − 6.718·Al2O3 − 1.430·Fe2O3 − 2.852·SO3;
 * C2S = 2.867·SiO2 − 0.7544·C3S; C3A = 2.650·Al2O3 − 1.692·Fe2O3; C4AF = 3.043·Fe2O3.
 * Range: cement with Al2O3/Fe2O3 of 0.64 or more. The true composition of the clinker can differ by
 * several per cent.
 * @throws {DomainError} for a fraction outside 0…1, an oxide ratio below 0.64 ('rich-in-iron'), or
 *   oxides that would leave a compound negative ('not-a-cement').
 * @source astm-c150 Annex A1, from memory; the factors follow from molar masses
 */
export function bogue(oxides: Oxides): Compounds {
  const { cao, sio2, al2o3, fe2o3, so3, freeLime = 0, mgo = 0 } = oxides;
  for (const [name, share] of Object.entries({ cao, sio2, al2o3, fe2o3, so3, freeLime, mgo }))
    demand(name, share, 'ratio', { min: 0, max: 1 });
  const least = { min: justUnder(LEAST_ALUMINA) };
  if (fe2o3 > 0) demand('al2o3/fe2o3', al2o3 / fe2o3, 'ratio', least, 'rich-in-iron');
  const c3s = 4.071 * (cao - freeLime) - 7.6 * sio2 - 6.718 * al2o3 - 1.43 * fe2o3 - 2.852 * so3;
  const c2s = 2.867 * sio2 - 0.7544 * c3s;
  const c3a = 2.65 * al2o3 - 1.692 * fe2o3;
  const c4af = 3.043 * fe2o3;
  for (const [name, share] of Object.entries({ c3s, c2s, c3a, c4af }))
    demand(name, share, 'ratio', { min: 0 }, 'not-a-cement');
  return { c3s, c2s, c3a, c4af, so3, freeLime, mgo };
}

/**
 * Heat of complete hydration of a cement, J/kg:
 * 500·C3S + 260·C2S + 866·C3A + 420·C4AF + 624·SO3 + 1186·free CaO + 850·MgO in J/g.
 * `compounds` mass fractions. No range is published.
 * @throws {DomainError} for a fraction outside 0…1.
 * @source schindler-folliard-2005 coefficients from memory
 */
export function cementHeat(compounds: Compounds): number {
  for (const [name, share] of Object.entries(compounds))
    demand(name, share, 'ratio', { min: 0, max: 1 });
  const { c3s, c2s, c3a, c4af, so3, freeLime, mgo } = compounds;
  const perGram =
    500 * c3s + 260 * c2s + 866 * c3a + 420 * c4af + 624 * so3 + 1186 * freeLime + 850 * mgo;
  return perGram * 1000;
}

/**
 * Heat of hydration of ground slag of the ordinary grade, J/kg.
 * @source schindler-folliard-2005 from memory
 */
const SLAG_HEAT = 461_000;

/** Heat of fly ash per unit of CaO in it, J/kg. @source schindler-folliard-2005 from memory */
const FLY_ASH_HEAT_PER_LIME = 1_800_000;

/**
 * Heat of a blended binder, J/kg of binder: cement's heat, slag's heat and 1800 J/g times the CaO
 * of fly ash, each by its share of the mass; anything else in the binder releases no heat.
 * `cement`, `flyAsh`, `slag` and `other` kg (or kg/m³); `cementHeat` and `slagHeat` J/kg;
 * `flyAshLime` the ash's CaO 0…1. No range is published.
 * @throws {DomainError} for a negative mass or heat, no binder at all, or a CaO outside 0…1.
 * @source schindler-folliard-2005 from memory
 */
export function binderHeat(of: {
  readonly cement: number;
  readonly cementHeat: number;
  readonly flyAsh?: number;
  readonly flyAshLime?: number;
  readonly slag?: number;
  readonly slagHeat?: number;
  readonly other?: number;
}): number {
  const { cement, flyAsh = 0, flyAshLime = 0, slag = 0, slagHeat = SLAG_HEAT, other = 0 } = of;
  for (const [name, mass] of Object.entries({ cement, flyAsh, slag, other }))
    demandNotNegative(name, mass, 'mass');
  const binder = cement + flyAsh + slag + other;
  demandPositive('binder', binder, 'mass');
  demandNotNegative('cementHeat', of.cementHeat, 'specificEnergy');
  demandNotNegative('slagHeat', slagHeat, 'specificEnergy');
  demand('flyAshLime', flyAshLime, 'ratio', { min: 0, max: 1 });
  const heat =
    cement * of.cementHeat + slag * slagHeat + flyAsh * flyAshLime * FLY_ASH_HEAT_PER_LIME;
  return heat / binder;
}
