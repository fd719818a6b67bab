import { fromUnit, toUnit } from '../../../core/quantity/convert.ts';
import { KINDS, unitOf } from '../../../core/quantity/kinds.ts';
import { type Soap, soapLeft, soapLost } from '../../../core/water/soap.ts';
import type { Say } from '../../../islands/engine/say.ts';
import { Curve, Dot, Plot, type Point } from '../../../islands/plots/Plot.tsx';
import { PERCENT } from '../../shared/words/amounts.ts';

/** The axis reaches at least this hardness, mol/m³: a little beyond “extremely hard”. A harder water extends it. */
const LEAST_END = fromUnit(800, 'hardness', 'mg/L CaCO3');

/** Share of a dose of soap lost against hardness, by chemistry and by the household figure. */
export function SoapPlot({
  soap,
  dose,
  water,
  soft,
  say,
}: {
  readonly soap: Soap;
  /** kg/m³. */
  readonly dose: number;
  /** mol/m³. */
  readonly water: number;
  readonly soft: number;
  readonly say: Say;
}) {
  const unit = KINDS.hardness.shown[say.system];
  const end = Math.max(LEAST_END, water, soft);
  const inUnit = (hardness: number) => toUnit(hardness, 'hardness', unit);
  const share = (hardness: number, which: 'stoichiometric' | 'empirical') => {
    const lost = soapLost({ hardness, soap })[which];
    return 100 * soapLeft({ dose, lost }).share;
  };
  // Straight until everything is lost: the corner is a point of its own.
  const curve = (which: 'stoichiometric' | 'empirical'): Point[] => {
    const slope = share(1e-6, which) / 1e-6;
    const corner = slope > 0 ? 100 / slope : end;
    const near = [corner / 2, corner * 0.999, corner, corner * 1.001];
    const ends = [0, ...near.filter((hardness) => hardness < end), end];
    return ends.map((hardness): Point => [inUnit(hardness), share(hardness, which)]);
  };
  const top = Math.min(100, Math.max(10, share(end, 'empirical')));
  const marks = [
    { hardness: soft, name: 'soft' },
    { hardness: water, name: 'yours' },
  ];
  /** Two names side by side would print over each other: one goes a line down. */
  const close = Math.abs(water - soft) < 0.35 * end;
  const said = (hardness: number) => say(hardness, 'hardness', { plain: true, significant: 3 });
  const percent = (hardness: number, which: 'stoichiometric' | 'empirical') =>
    say(share(hardness, which) / 100, 'ratio', { units: PERCENT, decimals: 0 });
  const words = (hardness: number) =>
    `at ${said(hardness)}, ${percent(hardness, 'stoichiometric')}`;
  return (
    <Plot
      words={`Share of the dose lost: yours, ${words(water)}; the soft water, ${words(soft)}. By the household figure yours would be ${percent(water, 'empirical')}.`}
      caption="Share of the dose lost. Whole line: by chemistry, two of soap to each ion. Broken line: the household figure, about twice that."
      x={[0, inUnit(end)]}
      y={[0, top]}
      xLabel={`hardness, ${unitOf('hardness', unit).symbol}`}
      yLabel="dose lost, %"
    >
      {(axes) => (
        <>
          <Curve axes={axes} points={curve('empirical')} dashed />
          <Curve axes={axes} points={curve('stoichiometric')} />
          {marks.map(({ hardness, name }) => {
            const [x, y] = [inUnit(hardness), share(hardness, 'stoichiometric')] as const;
            const far = hardness > end / 2;
            return (
              <g>
                <path class="leader" d={`M${axes.x(x)} ${axes.y(y)}V${axes.y(top)}`} />
                <text
                  class="strong on-layer"
                  x={axes.x(x) + (far ? -6 : 6)}
                  y={axes.y(top) + (close && name === 'soft' ? 30 : 14)}
                  text-anchor={far ? 'end' : 'start'}
                >
                  {name} {said(hardness).replace(/\u00a0.*/, '')}
                </text>
                <Dot axes={axes} at={[x, y]} label="" />
              </g>
            );
          })}
        </>
      )}
    </Plot>
  );
}
