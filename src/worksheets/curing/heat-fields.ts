import { choice, number } from '../../islands/fields.ts';
import { foamShare } from '../shared/foam/foam-share.ts';
import { foamDensityField, sandCement, waterCement } from '../shared/mix/recipe.ts';
import { cementDensity, counts } from '../shared/mix/recipe-details.ts';
import { CEMENT_CLASS } from '../shared/part/cement-class.ts';
import { wetDensity } from '../shared/part/part-densities.ts';
import { partThickness } from '../shared/part/part-sides.ts';
import { DAYS, PERCENT } from '../shared/words/amounts.ts';
import { castAt, temperatureFields } from './curing-fields.ts';
import { temperature } from './curing-temperature.ts';

const oxide = (label: string, example: string) =>
  number('ratio', {
    label,
    example,
    min: '0 %',
    max: '100 %',
    units: PERCENT,
    folded: true,
    when: { heat: ['oxides'] },
  });
const COVERS = {
  bare: 'Bare, under a sheet, or thin steel',
  wood: 'Wood, 18\u00a0mm (0.7\u00a0in)',
  insulated: 'Insulation over it',
} as const;
const swinging = { when: { shape: ['slab'], far: ['swing'] } };

/** The part, the mix it is made of, and what each face sees. */
export const heatFields = {
  shape: choice({
    label: 'It is',
    help: 'In air no warmer than the mix a cube comes out between the slab and the ball, a long square bar between the slab and the column.',
    options: { slab: 'A slab or a wall', column: 'A long round column', ball: 'A ball' },
    example: 'slab',
  }),
  inside: choice({
    label: 'Inside it is',
    options: { solid: 'Solid, but for small holes', hollow: 'Hollow' },
    example: 'solid',
    follows: { 'part.cores': 'hollow' },
    when: { shape: ['column', 'ball'] },
  }),
  thickness: {
    ...partThickness,
    label: 'Thickness, the thin way through, or diameter',
    help: 'Of a hollow part, its wall, as a slab. The example is the demo’s mix cast as one block rather than as slabs.',
    example: '300 mm',
  },
  wet: wetDensity,
  mixAt: temperature('Temperature of the mix', '20.1 °C', {
    min: '0 °C',
    max: '60 °C',
    takes: 'curing.mixTemperature',
  }),
  cement: choice({
    ...CEMENT_CLASS,
    when: { heat: ['published', 'total'] },
  }),
  air: choice({
    label: 'The air around it',
    options: { alike: 'Each day alike', days: 'Day by day' },
    example: 'alike',
    byOwn: { coldest: 'alike', warmest: 'alike', days: 'days' },
  }),
  coldest: temperature('Air, lowest of the day', '12 °C', {
    bench: 'curing.airColdest',
    when: { air: ['alike'] },
  }),
  warmest: temperature('Air, highest of the day', '20 °C', {
    bench: 'curing.airWarmest',
    when: { air: ['alike'] },
  }),
  days: { ...temperatureFields.days, label: 'Air, day by day', when: { air: ['days'] } },
  near: choice({
    label: 'One face',
    help: 'A round part has no other.',
    options: COVERS,
    example: 'bare',
  }),
  far: choice({
    label: 'The other face',
    when: { shape: ['slab'] },
    options: {
      ...COVERS,
      room: 'Bare, to a room at one temperature',
      swing: 'Bare, to a room that warms and cools',
      ground: 'Flat on the ground',
      closed: 'Lets no heat through',
    },
    example: 'wood',
  }),
  roomAt: temperature('Room', '20 °C', { when: { shape: ['slab'], far: ['room'] } }),
  roomColdest: temperature('Room, lowest of the day', '8 °C', swinging),
  roomWarmest: temperature('Room, highest of the day', '18 °C', swinging),
  groundAt: temperature('Ground', '10 °C', {
    help: 'Held at this temperature: ground that warms up would take less heat.',
    when: { shape: ['slab'], far: ['ground'] },
  }),
  strip: number('time', {
    label: 'Wood and insulation come off after',
    example: '3 d',
    min: '0.1 d',
    max: '30 d',
    units: DAYS,
    folded: true,
  }),
  heat: choice({
    label: 'The cement’s heat',
    options: {
      published: 'An ordinary cement, as published',
      total: 'A total I know',
      oxides: 'From its oxides',
    },
    example: 'published',
    folded: true,
  }),
  total: number('specificEnergy', {
    label: 'Heat of the cement, hydrated to the last grain',
    example: '450 kJ/kg',
    min: '50 kJ/kg',
    max: '800 kJ/kg',
    folded: true,
    when: { heat: ['total'] },
  }),
  cao: oxide('CaO', '63.5 %'),
  sio2: oxide('SiO₂', '20.5 %'),
  al2o3: oxide('Al₂O₃', '5.2 %'),
  fe2o3: oxide('Fe₂O₃', '3 %'),
  so3: oxide('SO₃', '2.8 %'),
  freeLime: oxide('Free CaO', '1 %'),
  mgo: oxide('MgO', '2 %'),
  blaine: number('count', {
    label: 'Fineness by Blaine, m²/kg',
    help: 'The finer, the hotter. Rapid cements are often near 500, from memory.',
    example: '370',
    min: '100',
    max: '1000',
    folded: true,
    when: { heat: ['oxides'] },
  }),
  waterCement: { ...waterCement, folded: true },
  counts,
  sandCement: { ...sandCement, folded: true },
  cementDensity,
  foamDensity: { ...foamDensityField, folded: true },
  plannedSurvival: foamShare,
  insulation: number('length', {
    label: 'Insulation, thickness',
    help: 'Foam board or dry mineral wool, 0.035\u00a0W/(m·K); from memory.',
    example: '50 mm',
    min: '5 mm',
    max: '500 mm',
    folded: true,
  }),
  place: choice({
    label: 'Where it stands',
    options: { indoors: 'Sheltered, in still air', outdoors: 'Outdoors, in the wind' },
    example: 'indoors',
    folded: true,
  }),
  wind: number('speed', {
    label: 'Wind',
    example: '20 km/h',
    min: '0 km/h',
    max: '200 km/h',
    bench: 'curing.wind',
    folded: true,
    when: { place: ['outdoors'] },
  }),
  conducts: choice({
    label: 'Conductivity',
    options: { density: 'From density and water', own: 'Measured, damp' },
    example: 'density',
    folded: true,
  }),
  conductivity: number('conductivity', {
    label: 'Conductivity, damp',
    example: '0.5 W/(m.K)',
    min: '0.02 W/(m.K)',
    max: '5 W/(m.K)',
    folded: true,
    when: { conducts: ['own'] },
  }),
  castAt: { ...castAt, folded: true },
} as const;
