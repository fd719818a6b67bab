/** The fibre a batch may hold; the kinds are those of `FIBRES`. */
export const FIBRE_NAMES = {
  'ar-glass': 'Alkali-resistant glass',
  'plain-glass': 'Plain glass (E glass): cement eats it',
  polypropylene: 'Polypropylene',
  pva: 'PVA',
  basalt: 'Basalt',
  nylon: 'Nylon',
  steel: 'Steel',
} as const;
