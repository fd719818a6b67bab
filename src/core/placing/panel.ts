import { demand } from '../domain-error.ts';

/** How many spans of equal length a panel runs over without a joint; 3 stands for three or more. */
export type Spans = 1 | 2 | 3;

/**
 * Coefficients of the largest moment, × w L², and the largest deflection, × w L⁴/(E I), for equal
 * spans under a uniform load. One span: 1/8, 5/384. Two: 1/8 over the middle support, 0.00542.
 * Three: 1/10, 0.00688 (end spans).
 * @source beam-tables
 */
export const SPAN_CASES: Readonly<
  Record<Spans, { readonly moment: number; readonly deflection: number }>
> = {
  1: { moment: 1 / 8, deflection: 5 / 384 },
  2: { moment: 1 / 8, deflection: 0.005416 },
  3: { moment: 1 / 10, deflection: 0.006884 },
};

export interface Panel {
  /** Between the centres of supports, m. */
  readonly span: number;
  readonly spans: Spans;
  /** Of the panel, m. */
  readonly thickness: number;
  /** Modulus of elasticity in the direction of the span, Pa. */
  readonly modulus: number;
  /** On the face, assumed uniform over the span, Pa. */
  readonly pressure: number;
}

/**
 * How far a form panel bulges between its supports, and how much stress it is under.
 *
 * A strip 1 m wide as a beam: I = t³/12, S = t²/6; deflection k_d p L⁴/(E I), moment k_m p L²,
 * stress M/S. Shear bending is left out, so a span under some ten thicknesses bends a little more
 * than this; supports are assumed rigid. No range is published.
 *
 * @returns deflection m; stress Pa; moment N·m per m of width; deflection over span
 * @throws {DomainError} for a span, thickness, modulus not above 0, a negative pressure
 * @source beam-tables, beam-statics
 */
export function panelBending({ span, spans, thickness, modulus, pressure }: Panel): {
  readonly deflection: number;
  readonly share: number;
  readonly stress: number;
  readonly moment: number;
} {
  demand('span', span, 'length', { min: 0, aboveMin: true });
  demand('thickness', thickness, 'length', { min: 0, aboveMin: true });
  demand('modulus', modulus, 'stress', { min: 0, aboveMin: true });
  demand('pressure', pressure, 'pressure', { min: 0 });
  const inertia = thickness ** 3 / 12;
  const { moment: km, deflection: kd } = SPAN_CASES[spans];
  const moment = km * pressure * span ** 2;
  const deflection = (kd * pressure * span ** 4) / (modulus * inertia);
  return { deflection, share: deflection / span, stress: moment / (thickness ** 2 / 6), moment };
}

/**
 * The longest span within both limits, m: from the deflection (L³ = share E I/(k_d p)) and from the
 * stress (L² = σ S/(k_m p)), whichever is shorter. Range as `panelBending`.
 *
 * @param share greatest deflection over span; @param stress greatest bending stress, Pa
 * @returns the span and which limit sets it; Infinity without pressure
 * @throws {DomainError} as `panelBending`; a limit not above 0
 * @source beam-tables, form-limits
 */
export function longestSpan(
  panel: Omit<Panel, 'span'> & { readonly share: number; readonly stress: number },
): { readonly span: number; readonly by: 'deflection' | 'stress' } {
  const { spans, thickness, modulus, pressure, share, stress } = panel;
  demand('share', share, 'ratio', { min: 0, aboveMin: true });
  demand('stress', stress, 'stress', { min: 0, aboveMin: true });
  demand('thickness', thickness, 'length', { min: 0, aboveMin: true });
  demand('modulus', modulus, 'stress', { min: 0, aboveMin: true });
  demand('pressure', pressure, 'pressure', { min: 0 });
  const { moment, deflection } = SPAN_CASES[spans];
  const byDeflection = Math.cbrt((share * modulus * thickness ** 3) / (12 * deflection * pressure));
  const byStress = Math.sqrt((stress * thickness ** 2) / (6 * moment * pressure));
  return byDeflection <= byStress
    ? { span: byDeflection, by: 'deflection' }
    : { span: byStress, by: 'stress' };
}

/**
 * The bulge of a panel that spans from the bottom to a batten at the top of the fill, and so
 * carries the whole triangular load: largest deflection 0.00652 p L⁴/(E I) at 0.519 L below the
 * top, largest moment p L²/(9√3) at L/√3 below it, p the pressure at the bottom. Range as
 * `panelBending`.
 *
 * @returns deflection m; stress Pa; moment N·m per m of width; deflection over span
 * @throws {DomainError} as `panelBending`
 * @source beam-tables
 */
export function panelUpTheFill(panel: Omit<Panel, 'spans'>): ReturnType<typeof panelBending> {
  const one = panelBending({ ...panel, spans: 1 });
  const deflection = (one.deflection / SPAN_CASES[1].deflection) * TRIANGLE_DEFLECTION;
  const moment = (panel.pressure * panel.span ** 2) / (9 * Math.sqrt(3));
  return {
    deflection,
    share: deflection / panel.span,
    stress: moment / (panel.thickness ** 2 / 6),
    moment,
  };
}

/**
 * Largest deflection of a simple span under a triangular load, over p L⁴/(E I), at ξ² = 1 −
 * √(8/15): ξ (3 ξ⁴ − 10 ξ² + 7)/360.
 */
const TRIANGLE_DEFLECTION = (() => {
  const xi = Math.sqrt(1 - Math.sqrt(8 / 15));
  return (xi * (3 * xi ** 4 - 10 * xi ** 2 + 7)) / 360;
})();
