import { fromUnit } from '../../core/quantity/convert.ts';
import { type Soap, soapLeft, soapLost } from '../../core/water/soap.ts';
import { Curve, Dot, Plot, type Point } from '../../islands/plots/Plot.tsx';

/** mg/L as CaCO₃: as far as "extremely hard" and a little beyond. */
const END = 800;

/** Share of a dose of soap lost against hardness, by chemistry and by the household figure. */
export function SoapPlot({
  soap,
  dose,
  water,
  soft,
}: {
  readonly soap: Soap;
  /** kg/m³. */
  readonly dose: number;
  /** mg/L as CaCO₃. */
  readonly water: number;
  readonly soft: number;
}) {
  const share = (mg: number, which: 'stoichiometric' | 'empirical') => {
    const lost = soapLost({ hardness: fromUnit(mg, 'hardness', 'mg/L CaCO3'), soap })[which];
    return 100 * soapLeft({ dose, lost }).share;
  };
  // Straight until everything is lost: the corner is a point of its own.
  const curve = (which: 'stoichiometric' | 'empirical'): Point[] => {
    const slope = share(1e-6, which) / 1e-6;
    const corner = slope > 0 ? 100 / slope : END;
    const near = [corner / 2, corner * 0.999, corner, corner * 1.001];
    const ends = [0, ...near.filter((mg) => mg < END), END];
    return ends.map((mg): Point => [mg, share(mg, which)]);
  };
  const top = Math.min(100, Math.max(10, share(END, 'empirical')));
  const shown = (mg: number) => Math.min(mg, END);
  const at = (mg: number): Point => [shown(mg), share(shown(mg), 'stoichiometric')];
  const marks = [
    { mg: soft, name: 'soft' },
    { mg: water, name: 'yours' },
  ];
  const words = (mg: number) => share(mg, 'stoichiometric').toFixed(0);
  return (
    <Plot
      words={`Share of the dose lost: yours, at ${water.toFixed(0)}\u00a0mg/L, ${words(water)}\u00a0%; the soft water, at ${soft.toFixed(0)}\u00a0mg/L, ${words(soft)}\u00a0%. By the household figure yours would be ${share(water, 'empirical').toFixed(0)}\u00a0%.`}
      caption="Share of the dose lost. Whole line: by chemistry, two of soap to each ion. Broken line: the household figure, about twice that."
      x={[0, END]}
      y={[0, top]}
      xLabel="hardness, mg/L as CaCO₃"
      yLabel="dose lost, %"
    >
      {(axes) => (
        <>
          <Curve axes={axes} points={curve('empirical')} dashed />
          <Curve axes={axes} points={curve('stoichiometric')} />
          {marks.map(({ mg, name }) => (
            <g>
              <path
                class="leader"
                d={`M${axes.x(shown(mg))} ${axes.y(at(mg)[1])}V${axes.y(top)}`}
              />
              <text
                class="strong"
                x={axes.x(shown(mg)) + (mg > END / 2 ? -6 : 6)}
                y={axes.y(top) + 14}
                text-anchor={mg > END / 2 ? 'end' : 'start'}
              >
                {name} {mg.toFixed(0)}
              </text>
              <Dot axes={axes} at={at(mg)} label="" />
            </g>
          ))}
        </>
      )}
    </Plot>
  );
}
