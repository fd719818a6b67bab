import { INSIDE_SURFACE } from '../../finished/thermal-resistance.ts';

/** Heat a sheltered face gives to still air by radiation and draught together, W/(m²·K). @source iso-6946 from memory (inner surface, 1/0.13) */
export const STILL_AIR_TRANSFER = 1 / INSIDE_SURFACE.horizontal;
