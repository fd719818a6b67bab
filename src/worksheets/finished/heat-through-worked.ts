import { demand } from '../../core/domain-error.ts';
import { dryConductivityBand } from '../../core/finished/conductivity.ts';
import {
  EQUILIBRIUM_MOISTURE,
  moistConductivity,
  mostMoisture,
  SERVICE_MOISTURE_MOST,
} from '../../core/finished/moisture.ts';
import {
  INSIDE_SURFACE,
  layerResistance,
  OUTSIDE_SURFACE,
  thicknessForResistance,
  transmittance,
} from '../../core/finished/thermal-resistance.ts';
import type { Values } from '../../islands/fields.ts';
import type { heatThroughFields } from './heat-through-fields.ts';

/** Moisture in use, of the dry mass. */
const MOISTURE = {
  dry: 0,
  dryRoom: EQUILIBRIUM_MOISTURE.dryRoom,
  dampRoom: EQUILIBRIUM_MOISTURE.dampRoom,
  service: SERVICE_MOISTURE_MOST,
} as const;

/** Resistance of the air at its faces, m²·K/W, by where it lies. */
const SURFACES = {
  wall: INSIDE_SURFACE.horizontal + OUTSIDE_SURFACE,
  roof: INSIDE_SURFACE.upward + OUTSIDE_SURFACE,
  floor: INSIDE_SURFACE.downward,
  none: 0,
} as const;

/** The thermal resistance of a layer, or the thickness for one, by the lowest and the highest table. */
export function heatThroughWorked(v: Values<typeof heatThroughFields>) {
  const known = v.wetness === 'other';
  const moisture = known ? v.moisture : MOISTURE[v.wetness];
  // The moistures offered are a light material’s; for a dense one they are merely too high.
  if (known)
    demand('moisture', moisture, 'ratio', { max: mostMoisture({ dryDensity: v.dry }) }, 'drowned');
  const band = dryConductivityBand({ dryDensity: v.dry });
  const low = moistConductivity({ dry: band.low, moisture });
  const high = moistConductivity({ dry: band.high, moisture });
  const density = v.dry * (1 + moisture);
  const sought = v.ask === 'thickness';
  const resistance = sought ? v.wanted : v.hoped;
  const [thin, thick] =
    resistance === undefined
      ? []
      : [low, high].map(({ conductivity }) =>
          thicknessForResistance({ resistance, conductivity, density }),
        );
  const thickness = sought ? thick!.thickness : v.thickness;
  const layer = (conductivity: number) => ({ thickness, conductivity });
  const through = (conductivity: number) =>
    transmittance({ layers: [layer(conductivity)], surfaces: SURFACES[v.place] });
  return {
    band,
    sought,
    wanted: resistance,
    thickness,
    moisture,
    low: low.conductivity,
    high: high.conductivity,
    // The tables end where the relation does.
    uncovered: band.notes.length > 0,
    // The layer that conducts most resists least.
    resistance: {
      low: layerResistance(layer(high.conductivity)),
      high: layerResistance(layer(low.conductivity)),
    },
    ways: [
      { name: 'the lowest', ...through(low.conductivity) },
      { name: 'the highest', ...through(high.conductivity) },
    ],
    thin,
    thick,
  };
}
