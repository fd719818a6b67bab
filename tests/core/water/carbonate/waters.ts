import fc from 'fast-check';
import { speciate } from '../../../../src/core/water/carbonate/speciate.ts';
import type { Speciation } from '../../../../src/core/water/carbonate/speciation.ts';

/** Zero, or anything from a trace to `most` mol/kg, each decade as likely as the next. */
const amount = (most: number) =>
  fc.oneof(
    { weight: 1, arbitrary: fc.constant(0) },
    {
      weight: 6,
      arbitrary: fc.double({ min: -8, max: Math.log10(most), noNaN: true }).map((log) => 10 ** log),
    },
  );

/** Salts and temperature of any water from distilled to some 2 g/L, 0–50 °C. */
export const solutes = fc.record({
  temperature: fc.double({ min: 273.15, max: 323.15, noNaN: true }),
  calcium: amount(0.01),
  magnesium: amount(0.01),
  sodium: amount(0.02),
  sulfate: amount(0.01),
});

/** The same with carbonate in it, pH 4.5 to 10.5. */
export const waters: fc.Arbitrary<Speciation> = fc
  .record({
    solutes,
    pH: fc.double({ min: 4.5, max: 10.5, noNaN: true }),
    carbon: fc.double({ min: -6, max: -2, noNaN: true }).map((log) => 10 ** log),
  })
  .map(({ solutes, pH, carbon }) => speciate(solutes, { pH, carbon }));

/** A hard mains water: 95 mg/L of calcium, 18 of magnesium, as in the handbook's workshop. */
export const mains = (pH = 7.4): Speciation =>
  speciate(
    { temperature: 285.15, calcium: 2.37e-3, magnesium: 0.74e-3, sodium: 1e-3, sulfate: 0.6e-3 },
    { pH, alkalinity: 4.2e-3 },
  );
