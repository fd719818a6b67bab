import { INSIDE_SURFACE } from '../../finished/thermal-resistance.ts';

/**
 * Heat transfer coefficient of a face in still air, convection and radiation together, W/(m²·K).
 * @source iso-6946 from memory (inner surface, 1/0.13)
 */
export const STILL_AIR_TRANSFER = 1 / INSIDE_SURFACE.horizontal;
