/** The end gauge of GUM H.1: lengths in nm, expansions in 1/°C, temperatures in °C. */
export const gaugeBlock = (x: readonly number[]) => {
  const [standard, difference, expansionGap, deviation, expansion, temperatureGap] = x as readonly [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return standard + difference - standard * (expansionGap * deviation + expansion * temperatureGap);
};
