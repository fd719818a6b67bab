/**
 * Twenty-four measured points: density (kg/m³), compressive strength (Pa) and conductivity
 * (W/(m·K)) of foamed alkali-activated slag. Not portland cement, and the file gives neither age
 * nor moisture: they show how far strength scatters at one density (0.57–3.82 MPa near 780 kg/m³)
 * and are no part of the band.
 * @source wong-2026
 */
export const WONG_2026: readonly {
  readonly mix: string;
  readonly density: number;
  readonly strength: number;
  readonly conductivity: number;
}[] = [
  { mix: '1200 SDS-1', density: 1366.93, strength: 6.499e6, conductivity: 0.6222 },
  { mix: '1200 SDS-2', density: 1339.32, strength: 7.769e6, conductivity: 0.6194 },
  { mix: '1200 SDS-3', density: 1321.35, strength: 5.887e6, conductivity: 0.5661 },
  { mix: '1200 SDS-4', density: 1229.32, strength: 6.419e6, conductivity: 0.5715 },
  { mix: '1200 C-1', density: 1280.21, strength: 5.866e6, conductivity: 0.5534 },
  { mix: '1200 C-2', density: 1211.98, strength: 5.009e6, conductivity: 0.561 },
  { mix: '1200 C-3', density: 1273.96, strength: 5.585e6, conductivity: 0.55 },
  { mix: '1200 C-4', density: 1306.77, strength: 6.538e6, conductivity: 0.579 },
  { mix: '1200 N-1', density: 1243.23, strength: 5.719e6, conductivity: 0.5291 },
  { mix: '1200 N-2', density: 1213.54, strength: 4.939e6, conductivity: 0.5828 },
  { mix: '1200 N-3', density: 1403.8, strength: 7.498e6, conductivity: 0.664 },
  { mix: '1200 N-4', density: 1255.99, strength: 5.101e6, conductivity: 0.5271 },
  { mix: '700 SDS-1', density: 761.46, strength: 0.569e6, conductivity: 0.3533 },
  { mix: '700 SDS-2', density: 560.68, strength: 0.181e6, conductivity: 0.2837 },
  { mix: '700 SDS-3', density: 916.88, strength: 1.364e6, conductivity: 0.4729 },
  { mix: '700 SDS-4', density: 783.23, strength: 3.824e6, conductivity: 0.3803 },
  { mix: '700 C-1', density: 714.58, strength: 1.7e6, conductivity: 0.3379 },
  { mix: '700 C-2', density: 728.65, strength: 1.147e6, conductivity: 0.4224 },
  { mix: '700 C-3', density: 752.6, strength: 3.352e6, conductivity: 0.3706 },
  { mix: '700 C-4', density: 789.06, strength: 2.709e6, conductivity: 0.4034 },
  { mix: '700 N-1', density: 778.13, strength: 1.2e6, conductivity: 0.3995 },
  { mix: '700 N-2', density: 874.9, strength: 2.745e6, conductivity: 0.4134 },
  { mix: '700 N-3', density: 1001.09, strength: 0.275e6, conductivity: 0.4405 },
  { mix: '700 N-4', density: 816.56, strength: 1.083e6, conductivity: 0.3434 },
];
