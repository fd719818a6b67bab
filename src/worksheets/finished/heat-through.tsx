import { MEASURED_OVER_TABLES } from '../../core/finished/conductivity-measured.ts';
import { SERVICE_MOISTURE_MOST } from '../../core/finished/moisture.ts';
import { worksheet } from '../../islands/worksheet.ts';
import { PERCENT } from '../shared/words/amounts.ts';
import { ConductivityPlot } from './drawn/ConductivityPlot.tsx';
import { heatThroughFields } from './heat-through-fields.ts';
import { heatThroughWorked } from './heat-through-worked.ts';

/** From this thickness on the heat of the cement matters, m: see the chapter's page on heat inside. A choice. */
const HEATS_INSIDE = 0.15;

export default worksheet({
  id: 'heat-through',
  question: 'How well does it insulate?',
  fields: heatThroughFields,
  work: heatThroughWorked,
  results: {
    makeIt: {
      label: 'Thickness, by the highest of the tables',
      kind: 'length',
      of: (r) => (r.sought ? r.thick?.thickness : undefined),
      significant: 2,
      toward: 'up',
    },
    atLeast: {
      label: 'Thickness, by the lowest of them',
      kind: 'length',
      of: (r) => (r.sought ? r.thin?.thickness : undefined),
      significant: 2,
      toward: 'up',
      answer: true,
    },
    low: {
      label: 'Resistance of the layer, by the highest of the tables',
      kind: 'thermalResistance',
      of: (r) => (r.sought ? undefined : r.resistance.low),
      significant: 2,
    },
    high: {
      label: 'Resistance of the layer, by the lowest of them',
      kind: 'thermalResistance',
      of: (r) => (r.sought ? undefined : r.resistance.high),
      significant: 2,
      answer: true,
    },
    gives: {
      label: 'So thick it may resist as much as',
      kind: 'thermalResistance',
      of: (r) => (r.sought ? r.resistance.high : undefined),
      significant: 2,
    },
    kLow: {
      label: 'Conductivity, by the lowest of the tables',
      kind: 'conductivity',
      of: (r) => r.low,
      significant: 2,
    },
    kHigh: {
      label: 'Conductivity, by the highest of the tables',
      kind: 'conductivity',
      of: (r) => r.high,
      significant: 2,
    },
    thin: {
      label: 'Thickness for the resistance wanted, by the lowest of the tables',
      kind: 'length',
      of: (r) => (r.sought ? undefined : r.thin?.thickness),
      significant: 2,
      toward: 'up',
    },
    thick: {
      label: 'Thickness, by the highest of the tables',
      kind: 'length',
      of: (r) => (r.sought ? undefined : r.thick?.thickness),
      significant: 2,
      toward: 'up',
    },
    mass: {
      label: 'A square metre (10.8\u00a0ft²) of that weighs',
      kind: 'mass',
      of: (r) => r.thick?.massPerArea,
      significant: 2,
    },
  },
  judge: ({ resistance, thin, thick, moisture, sought, wanted, uncovered }, { dry }, say) => {
    const mm = (si: number) => say(si, 'length', { significant: 2, toward: 'up' });
    const r = (si: number) => say(si, 'thermalResistance', { significant: 2 });
    if (moisture > SERVICE_MOISTURE_MOST)
      return {
        verdict: 'look',
        say: 'Wetter than anything read of in service: the rule behind this is stretched, and a soaked piece may conduct several times as much as a dry one. Dry it and keep it dry.',
      };
    if (uncovered)
      return {
        verdict: 'look',
        say: `Take this as a guess: no table goes as far as ${say(dry, 'density')}, and the relation is drawn beyond its own end. By it ${sought && thick ? `${r(resistance.low)} takes ${mm(thick.thickness)}.${heatsInside(thick.thickness, mm)}` : `the layer gives ${r(resistance.low)}.`}`,
      };
    if (wanted === undefined || !thin || !thick)
      return {
        verdict: 'good',
        say: `Plan with ${r(resistance.low)}, by the highest of the tables; by the lowest of them it gives ${r(resistance.high)}.`,
      };
    if (sought && thick.thickness >= HEATS_INSIDE)
      return {
        verdict: 'look',
        say: `For ${r(wanted)} it would be ${mm(thin.thickness)} to ${mm(thick.thickness)} thick, and so thick a pour heats inside: work that out first, cast it in layers, or put another insulant with it.`,
      };
    if (sought)
      return {
        verdict: 'good',
        say: `For ${r(wanted)} make it ${mm(thick.thickness)} thick, by the highest of the tables; by the lowest ${mm(thin.thickness)} would do.`,
      };
    if (resistance.low >= wanted)
      return {
        verdict: 'good',
        say: `By the highest of the tables it gives ${r(resistance.low)}, as much as you want.`,
      };
    const heats = heatsInside(thick.thickness, mm);
    if (resistance.high < wanted)
      return {
        verdict: 'look',
        say: `Even by the lowest of the tables it gives ${r(resistance.high)}, less than the ${r(wanted)} you want. Make it lighter, or up to ${mm(thick.thickness)} thick, or put another insulant with it.${heats}`,
      };
    return {
      verdict: 'look',
      say: `It may or may not reach ${r(wanted)}. By the highest of the tables it takes ${mm(thick.thickness)}.${heats}`,
    };
  },
  notes: ({ uncovered, sought, thickness }, _, say) => [
    ...(sought || thickness < HEATS_INSIDE
      ? []
      : [heatsInside(thickness, (si) => say(si, 'length', { significant: 2 })).trim()]),
    'The rise with moisture is that of autoclaved aerated concrete, from memory; none was seen for foamed concrete.',
    `The tables are no bound: pieces of another foamed binder, of unknown moisture, conducted up to ${MEASURED_OVER_TABLES.toFixed(1)} times what the highest of them says of a dry one.`,
    ...(uncovered
      ? [
          'The density lies outside the 320 to 1920\u00a0kg/m³ (20 to 120\u00a0lb/ft³) of the relation.',
        ]
      : []),
  ],
  refusals: {
    drowned: ({ allowed }, say) =>
      `That is more water than the pores of so dense a piece can hold: ${say(allowed.max!, 'ratio', { units: PERCENT, significant: 2 })} of its dry mass. Check the moisture and the density.`,
  },
  blames: { dryDensity: 'dry', resistance: ['wanted', 'hoped'], conductivity: 'dry' },
  working: [
    {
      tex: String.raw`\lambda = 0.072\,e^{0.00125\,\rho}\; e^{4u}`,
      put: ({ band, moisture, low, high }, { dry }, say) =>
        `dry at ${say(dry, 'density')}: ${say(band.low, 'conductivity', { significant: 2 })} to ${say(band.high, 'conductivity', { significant: 2 })} by the relation and two tables; × ${(low / band.low).toFixed(2)} for moisture of ${say(moisture, 'ratio', { units: PERCENT, significant: 2 })}, six at most: ${say(low, 'conductivity', { significant: 2 })} to ${say(high, 'conductivity', { significant: 2 })}`,
    },
    {
      tex: String.raw`R = \frac{d}{\lambda},\quad U = \frac{1}{R_{si} + R + R_{se}}`,
      put: ({ resistance, thickness }, _, say) =>
        `${say(thickness, 'length')} ÷ λ = ${say(resistance.low, 'thermalResistance', { significant: 2 })} to ${say(resistance.high, 'thermalResistance', { significant: 2 })}`,
    },
  ],
  figure: ({ values, result, say }) => (
    <ConductivityPlot density={values.dry} low={result.low} high={result.high} say={say} />
  ),
  tables: [
    {
      caption: 'Through the part, with the air at its faces (surface resistances from memory)',
      columns: ['Of the tables', 'Resistance in all', 'U'],
      rows: ({ ways }, _, say) =>
        ways.map(({ name, resistance, transmittance }) => [
          name,
          say(resistance, 'thermalResistance', { significant: 2 }),
          say(transmittance, 'thermalTransmittance', { significant: 2 }),
        ]),
    },
  ],
  cautions: ['not-load-bearing', 'who-decides-structure'],
  defers: [
    'Energy rules ask for declared values of tested products; these are published figures of others.',
  ],
  sources: [
    'aci-122r',
    'bca-1994',
    'ashrae-materials',
    'iso-10456',
    'iso-6946',
    'mag-civ-eng-2011',
    'jerman-2013',
    'wong-2026',
  ],
});

/** What to mind of a pour so thick, behind another sentence; nothing of a thinner one. */
const heatsInside = (thickness: number, mm: (si: number) => string) =>
  thickness >= HEATS_INSIDE
    ? ` A pour ${mm(thickness)} thick heats inside: work that out first, or cast it in layers.`
    : '';
