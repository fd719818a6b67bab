import { formatNumber } from '../../core/quantity/format.ts';
import { softEnoughForFoam } from '../../core/water/hardness-class.ts';
import { EMPIRICAL_SOAP_LOSS, SOAPS, soapLeft, soapLost } from '../../core/water/soap.ts';
import { choice, number } from '../../islands/fields.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { soapLoss } from '../shared/foam/soap-loss.ts';
import { whichSoap } from '../shared/foam/which-soap.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { BRINE_REFUSAL, demandFresh } from './brine.ts';
import { SoapPlot } from './drawn/SoapPlot.tsx';
import { hardness, IN_SOLUTION, softHardness } from './water-fields.ts';

/** More dry soap, kg/m³, is no foam's: a tenth of its water. A choice: no source draws this line. */
const MUCH_SOAP = 100;

export default worksheet({
  id: 'soap-lost',
  question: 'How much of my foaming agent does this water take?',
  fields: {
    kind: choice({
      label: 'What is the foaming agent?',
      options: {
        soap: 'A soap of fatty acids',
        synthetic: 'A synthetic surfactant',
        protein: 'A protein concentrate',
      },
      example: 'soap',
      bench: 'foam.agentKind',
    }),
    soap: {
      ...whichSoap,
      help: 'Liquid soaps are mostly of potassium, bars of sodium; olive and rape oil give oleate.',
    },
    dose: number('concentration', {
      label: 'Dry soap in the foam’s water',
      help: 'The soap alone: a liquid soap is often under a third soap. 1:40 of one with 30\u00a0% and 1.1\u00a0g/cm³ brings about 8.2\u00a0g to a litre of water (1.1\u00a0oz/gal).',
      example: '8.2 g/L',
      plusMinus: '0.5 g/L',
      min: '0 g/L',
      aboveMin: true,
      max: '500 g/L',
      units: IN_SOLUTION,
      bench: 'foam.soapDose',
      when: { kind: ['soap'] },
    }),
    hardness,
    soft: softHardness,
  },
  work: (v) => {
    demandFresh(v.hardness);
    const of = (h: number) => {
      const lost = soapLost({ hardness: h, soap: v.soap });
      return {
        lost,
        byNumber: soapLeft({ dose: v.dose, lost: lost.stoichiometric }),
        byHouse: soapLeft({ dose: v.dose, lost: lost.empirical }),
      };
    };
    return { soap: v.kind === 'soap', yours: of(v.hardness), rain: of(v.soft) };
  },
  results: {
    share: {
      label: 'Of the dose lost, by chemistry',
      kind: 'ratio',
      of: (r) => (r.soap ? r.yours.byNumber.share : undefined),
      units: PERCENT,
      sure: true,
      aboutZero: 'good',
    },
    lost: {
      label: 'Soap turned to scum',
      kind: 'concentration',
      of: (r) => (r.soap ? r.yours.lost.stoichiometric : undefined),
      units: IN_SOLUTION,
      note: 'two of soap for each calcium or magnesium',
    },
    left: {
      label: 'Left to make foam',
      kind: 'concentration',
      of: (r) => (r.soap ? r.yours.byNumber.left : undefined),
      units: IN_SOLUTION,
    },
    needed: {
      label: 'To put in, so that the dose is left',
      kind: 'concentration',
      of: (r) => (r.soap ? r.yours.byNumber.needed : undefined),
      units: IN_SOLUTION,
      toward: 'up',
      note: 'the dose above stays: it is what the foam is to have',
    },
    empiricalShare: {
      label: 'Of the dose lost, by the household figure',
      kind: 'ratio',
      of: (r) => (r.soap ? r.yours.byHouse.share : undefined),
      units: PERCENT,
      significant: 2,
      note: 'commercial soap, with the excess a lather needs: about twice the chemistry',
    },
    empiricalNeeded: {
      label: 'To put in, by that figure',
      kind: 'concentration',
      of: (r) => (r.soap ? r.yours.byHouse.needed : undefined),
      units: IN_SOLUTION,
      significant: 2,
      toward: 'up',
    },
    rainShare: {
      label: 'In the soft water, lost by chemistry',
      kind: 'ratio',
      of: (r) => (r.soap ? r.rain.byNumber.share : undefined),
      units: PERCENT,
      significant: 2,
    },
  },
  doubts: (r, { dose }, say) =>
    r.soap && dose > MUCH_SOAP
      ? `Look at the dose: ${say(dose, 'concentration', { units: IN_SOLUTION })} is no foaming solution, but a concentrate. Give the dry soap in the water of the foam.`
      : undefined,
  judge: (r, v, say) => {
    const share = say(r.yours.byNumber.share, 'ratio', { units: PERCENT, significant: 2 });
    const hard = (si: number) => say(si, 'hardness', { plain: true, significant: 3 });
    const use =
      v.soft < v.hardness / 2 && soapLoss(r.rain.byNumber.share) !== 'stop'
        ? `Use the soft water (${hard(v.soft)})`
        : 'The other water you name is not soft enough: find rain, distilled or softened water';
    // What an agent that is no soap bears of hardness is not known; that it need bear none is enough.
    if (v.kind !== 'soap' && softEnoughForFoam(v.hardness))
      return {
        verdict: 'good',
        say: `At ${hard(v.hardness)} there is too little hardness to fear: make the foam with this water.`,
      };
    if (v.kind !== 'soap' && softEnoughForFoam(v.soft))
      return {
        verdict: 'good',
        say: `Make the foam with the soft water (${hard(v.soft)}), and the question does not arise: what this one does to such an agent only a small foam would tell.`,
      };
    if (v.kind === 'synthetic')
      return {
        verdict: 'look',
        say: 'Most synthetic foamers stay dissolved beside calcium, some cloud or foam less; no figure is known here. Make one small foam with this water and one with soft water, and let both stand as long as your mix takes.',
      };
    if (v.kind === 'protein')
      return {
        verdict: 'look',
        say: 'Protein does not fall out as soap does, and some protein concentrates are made with calcium or iron in them; how much hardness one bears only its sheet says. Make a small foam with each water and let both stand.',
      };
    if (r.yours.byNumber.share >= 1)
      return {
        verdict: 'stop',
        say: `This water takes the whole dose and gives scum, not foam. ${use}.`,
      };
    const verdict = soapLoss(r.yours.byNumber.share);
    if (verdict === 'stop')
      return {
        verdict: 'stop',
        say: `${share} of the dose is gone before there is a bubble, and more soap only makes more scum, which breaks foam. ${use}.`,
      };
    if (verdict === 'look')
      return {
        verdict,
        say: `${share} of the dose is lost. ${use}, or, second best and with a poorer foam, put in at least ${say(r.yours.byNumber.needed, 'concentration', { units: IN_SOLUTION, toward: 'up' })}, so that the dose is left, and strain off the scum. Leave the dose above as it is.`,
      };
    return { verdict: 'good', say: `${share} of the dose is lost: use this water for the foam.` };
  },
  notes: (r) =>
    r.soap ? [] : ['The working is of soap. What hardness takes of this agent is not known here.'],
  refusals: BRINE_REFUSAL,
  working: [
    {
      tex: String.raw`\begin{gathered} \mathrm{Ca^{2+}} + 2\,\mathrm{RCOO^-} \rightarrow \mathrm{Ca(RCOO)_2} \\ m = 2\,H\,M \end{gathered}`,
      put: (r, v, say) =>
        `2 × ${say(v.hardness, 'hardness', { units: { metric: 'mmol/L', us: 'mmol/L' } })} × ${formatNumber(SOAPS[v.soap] * 1000, { decimals: 1 })}\u00a0g/mol = ${say(r.yours.lost.stoichiometric, 'concentration', { units: IN_SOLUTION })}`,
    },
    {
      tex: String.raw`m_{\text{house}} = 12\,H\,M_{\mathrm{CaCO_3}}`,
      put: (r, v, say) =>
        `${EMPIRICAL_SOAP_LOSS} × ${say(v.hardness, 'hardness')} = ${say(r.yours.lost.empirical, 'concentration', { units: IN_SOLUTION })}`,
    },
  ],
  figure: ({ values: v, say }) =>
    v.kind === 'soap' ? (
      <SoapPlot soap={v.soap} dose={v.dose} water={v.hardness} soft={v.soft} say={say} />
    ) : undefined,
  cautions: ['glycerol-and-concentrate'],
  defers: ['The concentrate’s own sheet, for what it is made of and the water it needs.'],
  sources: [
    'soap-stoichiometry',
    'iupac-atomic-weights',
    'frankland',
    'utah-soap-item',
    'usgs-hardness',
    'common-practice',
  ],
});
