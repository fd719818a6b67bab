/** The least pH of water that EN 1008 lets mix cement, Table 1. From memory. @source en-1008-memory */
export const LEAST_PH = 4;
