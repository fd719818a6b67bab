import { DomainError } from '../../core/domain-error.ts';
import { waterPerVolume } from '../../core/water/carbonate/from-report.ts';
import * as MOLAR_MASS from '../../core/water/molar-masses.ts';
import { CAUSTIC } from '../../core/water/ph-limits.ts';
import {
  DECAHYDRATE_FACTOR,
  SETTLED_COLD,
  sodaForHardness,
  sodaMass,
  sodaMixUp,
} from '../../core/water/soften/washing-soda.ts';
import type { Say } from '../../islands/engine/say.ts';
import { choice, number } from '../../islands/fields.ts';
import { type Judgement, worksheet } from '../../islands/worksheet.ts';
import { lazy } from '../shared/lazy.ts';
import { SMALL_MASS } from '../shared/words/amounts.ts';
import { saidApart } from '../shared/words/said-apart.ts';
import { WEIGHABLE } from '../shared/words/weighable.ts';
import { balancedBy, isReported } from './balanced-by.ts';
import { BRINE_REFUSAL, demandFresh } from './brine.ts';
import { SofteningCurve } from './drawn/SofteningCurve.tsx';
import { hardnessParts } from './hardness-parts.ts';
import { ofPH, washedNote } from './of-ph.ts';
import { softWater } from './soft-water.ts';
import { softenedOrSlip } from './softened-or-slip.ts';
import { stillHard } from './still-hard.ts';
import {
  alkalinity,
  IN_SOLUTION,
  otherIons,
  others,
  readPH,
  waterTemperature,
} from './water-fields.ts';
import { WATER_BLAMES, WATER_REFUSALS, waterOf } from './water-solved.ts';

/**
 * If less than this share of the stoichiometric soda is needed, most of the hardness falls out as
 * lime by itself. A choice.
 */
const BY_SODA = 0.5;
/** Two hardnesses within this factor count as the same. A choice. */
const ABOUT = 1.03;
/** What soda can do for a water. */
type Outcome =
  /** As soft as is wanted without any. */
  | 'soft'
  /** No harder than a cold bucket stays, whatever the dose. */
  | 'spent'
  /** Most of it is left to lime that comes out by itself. */
  | 'by-itself'
  /** More is wanted than a cold bucket gives. */
  | 'beyond'
  /** A dose that softens it as far as is wanted. */
  | 'dose';
const NAMES = { anhydrous: 'soda ash', decahydrate: 'soda crystals' } as const;

/** The refusal of a dose that makes the water caustic, whatever hardness it would leave. */
const caustic = (pH: number, say: Say): Judgement | undefined =>
  pH > CAUSTIC
    ? {
        verdict: 'stop',
        say: `Ask for more hardness than that, or blend with soft water instead: at pH\u00a0${say(pH, 'count', { significant: 3 })} the water is caustic and little calcium is left to take out.`,
      }
    : undefined;

export default worksheet({
  id: 'soften-soda',
  question: 'How much washing soda softens this water?',
  fields: {
    ...hardnessParts,
    alkalinity,
    pH: readPH,
    target: number('hardness', {
      label: 'Hardness wanted',
      example: '120 mg/L CaCO3',
      min: '0 mg/L CaCO3',
      max: '5000 mg/L CaCO3',
      bench: 'water.softTarget',
    }),
    form: choice({
      label: 'Your washing soda',
      options: {
        anhydrous: 'Soda ash: dry powder, no water',
        decahydrate: 'Crystals, Na₂CO₃·10 H₂O',
      },
      example: 'decahydrate',
      bench: 'water.sodaForm',
    }),
    volume: number('volume', {
      label: 'Water to soften',
      ...softWater,
      bench: 'water.toSoften',
    }),
    temperature: { ...waterTemperature, folded: true },
    others: { ...others, example: 'none', folded: true },
    ...otherIons,
  },
  folded: 'Temperature and other ions',
  work: (v, _, typed) => {
    const water = waterOf(v);
    const perVolume = waterPerVolume({ temperature: v.temperature });
    const hardness = (water.calcium + water.magnesium) * perVolume;
    demandFresh(hardness);
    const wanted = hardness > v.target * ABOUT;
    const target = wanted ? v.target : v.target * ABOUT;
    const made = sodaForHardness({ water, target: target / perVolume });
    if (!made.reached)
      throw new DomainError({
        quantity: 'target',
        value: v.target,
        kind: 'hardness',
        allowed: { min: made.least * perVolume },
        because: 'magnesium-stays',
      });
    const { softened } = made;
    // Nothing makes a cold bucket softer than it settles.
    const cold = {
      min: water.magnesium * perVolume + SETTLED_COLD.min,
      max: water.magnesium * perVolume + SETTLED_COLD.max,
    };
    const spent = wanted && hardness <= cold.max * ABOUT;
    const soda = spent ? 0 : made.soda;
    const other = v.form === 'anhydrous' ? 'decahydrate' : 'anhydrous';
    const mixUp = lazy(() => sodaMixUp({ water, soda, meant: v.form, used: other }));
    const litres = perVolume * v.volume;
    const mass = sodaMass(soda * litres, v.form);
    const stoichiometric = sodaMass(wanted ? (hardness - v.target) * v.volume : 0, v.form);
    const settled = softened.settled.max * perVolume;
    const outcome = (): Outcome => {
      if (!wanted) return 'soft';
      if (spent) return 'spent';
      if (mass < BY_SODA * stoichiometric) return 'by-itself';
      return settled > v.target * ABOUT ? 'beyond' : 'dose';
    };
    return {
      water,
      perVolume,
      soda,
      softened,
      alkalinity: typed?.('alkalinity') ? v.alkalinity : undefined,
      mixUp,
      hardness,
      cold,
      mass,
      outcome: outcome(),
      concentration: sodaMass(soda * perVolume, v.form),
      settled,
      sludge: softened.sludge * litres,
      stoichiometric,
    };
  },
  results: {
    mass: {
      label: 'Washing soda to stir in',
      kind: 'mass',
      of: (r) => (r.outcome === 'beyond' ? undefined : r.mass),
      units: SMALL_MASS,
      sure: true,
    },
    // Near the magnesium the dose runs away: what the readings leave open says nothing of it.
    beyond: {
      label: 'Washing soda, by equilibrium alone',
      kind: 'mass',
      of: (r) => (r.outcome === 'beyond' ? r.mass : undefined),
      units: SMALL_MASS,
      answer: true,
      note: 'more than a cold bucket can use',
    },
    concentration: {
      label: 'Washing soda in the water',
      kind: 'concentration',
      of: (r) => (r.outcome === 'beyond' ? undefined : r.concentration),
      units: IN_SOLUTION,
    },
    pH: {
      label: 'pH reached',
      kind: 'count',
      of: ({ outcome, softened }) =>
        outcome === 'dose' || outcome === 'by-itself' ? softened.water.pH : undefined,
    },
    left: {
      label: 'Hardness at equilibrium',
      kind: 'hardness',
      of: (r) => (r.outcome === 'spent' ? undefined : r.softened.hardness * r.perVolume),
    },
    settled: {
      label: 'Expect from a cold bucket',
      kind: 'hardness',
      of: ({ outcome, settled }) =>
        outcome === 'soft' || outcome === 'by-itself' ? undefined : settled,
      note: 'as equilibrium says, but never less than the magnesium and the 30 to 35\u00a0mg/L of calcite that stay',
    },
    sludge: {
      label: 'Calcite sludge, dry',
      kind: 'mass',
      of: (r) => (r.soda > 0 && r.outcome !== 'beyond' ? r.sludge : undefined),
      units: SMALL_MASS,
      significant: 2,
    },
    sodium: {
      label: 'Sodium added',
      kind: 'concentration',
      of: (r) =>
        r.outcome === 'beyond' ? undefined : 2 * r.soda * r.perVolume * MOLAR_MASS.sodium,
      significant: 2,
    },
    stoichiometric: {
      label: 'By the textbook, mole for mole',
      kind: 'mass',
      of: (r) => r.stoichiometric,
      units: SMALL_MASS,
      note: 'without what dissolved CO₂ takes, or the calcite that comes out by itself',
    },
    mixUp: {
      label: 'If you weigh the other powder by mistake',
      kind: 'hardness',
      of: (r) =>
        r.soda > 0 && r.outcome !== 'beyond' ? r.mixUp().got.hardness * r.perVolume : undefined,
      significant: 2,
      note: 'hardness left at equilibrium; a cold bucket stops at its magnesium and 30 to 35\u00a0mg/L of calcite, whatever the dose',
    },
  },
  judge: (r, v, say) => {
    const unfit = ofPH(v.pH, say);
    if (unfit) return unfit;
    const dose = `${say(r.mass, 'mass', { units: SMALL_MASS })} of ${NAMES[v.form]}`;
    switch (r.outcome) {
      case 'soft': {
        const doubt = softenedOrSlip(r.hardness, r.alkalinity, 'it needs no soda', say);
        if (doubt) return { verdict: 'look', say: doubt };
        const still = stillHard(r.hardness, say);
        return {
          verdict: still ? 'look' : 'good',
          say: `It is ${r.hardness > v.target ? 'about ' : ''}as soft as you want without any soda.${still}`,
        };
      }
      case 'spent':
        return {
          verdict: 'look',
          say: `Stir in no soda: the ${say(r.hardness, 'hardness', { significant: 2 })} of this water are ${r.hardness < r.cold.min ? 'less than' : 'about'} what stays in a cold bucket, whatever the dose: its magnesium and 30 to 35\u00a0mg/L of calcite. Blend it with soft water, or use a softener.`,
        };
      case 'by-itself':
        return (
          caustic(r.softened.water.pH, say) ?? {
            verdict: 'look',
            say: `By the balance ${r.soda > 0 ? `${dose} is enough, for calcite comes out by itself` : `it could come to ${say(r.softened.hardness * r.perVolume, 'hardness')} by itself`}. How long that takes is not known here: test it after a night, or stir in the textbook’s ${say(r.stoichiometric, 'mass', { units: SMALL_MASS })} first.`,
          }
        );
      case 'beyond':
        return (
          caustic(r.softened.water.pH, say) ?? {
            verdict: 'look',
            say: `Blend with soft water, or ask for what a cold bucket leaves: equilibrium allows ${say(v.target, 'hardness')}, a cold bucket will leave about ${saidApart(r.settled, 'hardness', [v.target], say)}, and more soda does not help.${stillHard(r.settled, say)}`,
          }
        );
      case 'dose': {
        const still = stillHard(Math.max(v.target, r.settled), say);
        return (
          caustic(r.softened.water.pH, say) ?? {
            verdict: still ? 'look' : 'good',
            say: `Dissolve ${dose} in a jug of it, stir it in, let it settle overnight and draw off the clear water.${still || ' Use it for the foam.'} Keep it out of the base mix.`,
          }
        );
      }
    }
  },
  notes: (r, v, say) => {
    const washed = washedNote(v.pH);
    if (r.outcome === 'soft' || r.outcome === 'spent' || ofPH(v.pH, say)) return washed;
    const balanced = isReported(v) ? washed : [...washed, balancedBy(r.water)];
    if (r.outcome === 'beyond') return balanced;
    const factor = say(DECAHYDRATE_FACTOR, 'count', { significant: 2 });
    const slip =
      v.form === 'anhydrous'
        ? `Weigh crystals by this figure and the water gets 1/${factor} of the soda: it stays hard.`
        : `Weigh soda ash by this figure and the water gets ${factor} times the soda: pH\u00a0${say(r.mixUp().got.water.pH, 'count', { significant: 3 })}. Crystals left open turn to powder and are then somewhere between the two.`;
    const notes = [
      ...(r.mass > 0 ? [slip] : []),
      'Test the hardness of the clear water before you trust it. Soda quickens cement and can make it stiffen at once: none of it belongs in the base mix (common practice, no source).',
    ];
    const mass = r.mass || r.stoichiometric;
    if (mass < WEIGHABLE) {
      const times = 10 ** Math.ceil(Math.log10((2 * WEIGHABLE) / mass));
      const shown = say(mass, 'mass', { units: SMALL_MASS, significant: 2 });
      notes.unshift(
        times > 1000
          ? `A kitchen scale does not show ${shown}: soften more water at once.`
          : `A kitchen scale hardly shows ${shown}: weigh ${times} times as much for ${times} times the water, or dissolve that in a jug and stir in a share of 1 in ${times}, measured.`,
      );
    }
    return [...notes, ...balanced];
  },
  refusals: {
    ...WATER_REFUSALS,
    ...BRINE_REFUSAL,
    'magnesium-stays': ({ value, allowed }, say) =>
      `Soda takes out calcium and leaves magnesium: ${say(allowed.min!, 'hardness')} is the least it can give here, and ${say(value, 'hardness')} is wanted. Blend with soft water, or use a softener.`,
  },
  blames: WATER_BLAMES,
  working: [
    {
      tex: String.raw`\mathrm{Ca^{2+}} + \mathrm{CO_3^{2-}} \rightarrow \mathrm{CaCO_3}`,
      put: (r, v, say) =>
        `Mole for mole: (${say(r.hardness, 'hardness')} − ${say(v.target, 'hardness')}) of calcium asks for ${say(r.stoichiometric, 'mass', { units: SMALL_MASS })} of ${NAMES[v.form]}.`,
    },
    {
      tex: String.raw`\mathrm{CO_2} + \mathrm{CO_3^{2-}} + \mathrm{H_2O} \rightarrow 2\,\mathrm{HCO_3^-}`,
      put: (r, _, say) =>
        r.outcome === 'spent'
          ? 'No soda: a cold bucket takes no more out, as below.'
          : `Dissolved CO₂ takes its share first. Solved with every ion and pair until calcite is just saturated: ${say(r.mass, 'mass', { units: SMALL_MASS })}, pH\u00a0${r.softened.water.pH.toFixed(1)}.`,
    },
    {
      tex: String.raw`\text{limit} = [\mathrm{Mg}] + 30\ldots 35\ \text{mg/L as CaCO}_3`,
      put: (r, _, say) =>
        `${say(r.cold.min, 'hardness')} to ${say(r.cold.max, 'hardness')} in a cold bucket, whatever the dose.`,
    },
  ],
  figure: ({ result, values, say }) => (
    <SofteningCurve
      water={result.water}
      form={values.form}
      molarMass={sodaMass(1, values.form)}
      soda={result.soda}
      perVolume={result.perVolume}
      say={say}
    />
  ),
  cautions: ['washing-soda'],
  defers: [
    'The soda’s own label says which form it is; the concentrate’s sheet says whether it bears an alkaline water.',
  ],
  sources: [
    'plummer-busenberg-1982',
    'wateq4f',
    'awwa-asce-wtpd',
    'davis-2010',
    'en-1008-memory',
    'common-practice',
  ],
});
