import { CHLORIDE_WARMTH } from '../../../src/core/curing/accelerator.ts';
import { thirdRuleFactor } from '../../../src/core/curing/third-rule.ts';
import { compareWaters } from '../../../src/core/water/comparison-test.ts';
import { alkaliesOf, judgeMixingWater } from '../../../src/core/water/fitness.ts';
import type { Constituent, Use } from '../../../src/core/water/mixing-water-limits.ts';
import { calciumChlorideEquivalent } from '../../../src/core/water/set-effect.ts';
import { clarkHardness, type Soap, soapLost } from '../../../src/core/water/soap.ts';
import { type Answers, answer } from '../answer.ts';

const READINGS = {
  controlInitial: 'time',
  testInitial: 'time',
  controlFinal: 'time',
  testFinal: 'time',
  controlStrength: 'stress',
  testStrength: 'stress',
  line: 'text',
} as const;

const compared = (
  row: { readonly [K in keyof typeof READINGS]?: K extends 'line' ? string : number },
) =>
  compareWaters({
    control: {
      initialSet: row.controlInitial as number | undefined,
      finalSet: row.controlFinal as number | undefined,
      strength: row.controlStrength as number | undefined,
    },
    test: {
      initialSet: row.testInitial as number | undefined,
      finalSet: row.testFinal as number | undefined,
      strength: row.testStrength as number | undefined,
    },
  });

export const cementAnswers: Answers = {
  'soap/per-hardness': answer({
    asks: 'How many grams of this soap does a gram of hardness, as CaCO₃, spoil?',
    input: { soap: 'text' },
    gives: 'number',
    work: ({ soap }) => soapLost({ hardness: 1 / 0.1000869, soap: soap as Soap }).stoichiometric,
  }),
  'soap/empirical': answer({
    asks: 'How much commercial soap does this volume of hard water spoil, by household experience?',
    input: { hardness: 'hardness', volume: 'volume' },
    gives: 'mass',
    work: ({ hardness, volume }) =>
      soapLost({ hardness, soap: 'sodiumStearate' }).empirical * volume,
  }),
  'soap/clark': answer({
    asks: 'What hardness does Clark’s soap test give for this much soap solution?',
    input: { soap: 'volume' },
    gives: 'hardness',
    beside: true,
    work: clarkHardness,
  }),
  'mixing-water/verdict': answer({
    asks: 'Is a water with this much of one thing within a standard’s limit for a use?',
    input: { standard: 'text', of: 'text', use: 'text', value: 'concentration' },
    gives: 'text',
    work: ({ standard, of, use, value }) => {
      const lines = judgeMixingWater({ [of as Constituent]: value }, use as Use);
      const line = lines.find((l) => l.limit.standard === standard && l.limit.of === of);
      return line ? line.verdict : 'no limit';
    },
  }),
  'mixing-water/alkalies': answer({
    asks: 'What are the alkalies, as Na₂O + 0.658 K₂O?',
    input: { sodium: 'concentration', potassium: 'concentration' },
    gives: 'concentration',
    work: alkaliesOf,
  }),
  'mixing-water/en-1008-test': answer({
    asks: 'Does the water pass this line of EN 1008’s comparison test?',
    input: READINGS,
    gives: 'text',
    work: (row) => {
      const { en1008 } = compared(row);
      return en1008[row.line as keyof typeof en1008];
    },
  }),
  'mixing-water/c1602-test': answer({
    asks: 'Does the water pass this line of ASTM C1602’s comparison test?',
    input: READINGS,
    gives: 'text',
    work: (row) => {
      const { astmC1602 } = compared(row);
      return astmC1602[row.line as keyof typeof astmC1602];
    },
  }),
  'set/chloride-equivalent': answer({
    asks: 'What share of the cement (%) would the hardness be, were it all calcium chloride?',
    input: { hardness: 'hardness', waterCement: 'number' },
    gives: 'number',
    work: (mix) => calciumChlorideEquivalent(mix).shareOfCement * 100,
  }),
  'set/warmth': answer({
    asks: 'How much warmth quickens set as much as this share (%) of calcium chloride?',
    input: { percent: 'number' },
    gives: 'temperatureDifference',
    work: ({ percent }) => (CHLORIDE_WARMTH * percent) / 100,
  }),
  'set/colder': answer({
    asks: 'How many times as long does setting take this much colder?',
    input: { colder: 'temperatureDifference' },
    gives: 'number',
    work: ({ colder }) => thirdRuleFactor(-colder),
  }),
};
