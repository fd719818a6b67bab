export interface Room {
  /** Bytes; undefined if the browser does not say. */
  readonly used: number | undefined;
  readonly allowed: number | undefined;
  /** Whether the browser has promised not to clear it by itself. */
  readonly persistent: boolean | undefined;
}

/** How much storage is used, and whether it is persistent. */
export async function room(): Promise<Room> {
  const { storage } = navigator;
  const estimate = await storage?.estimate?.().catch(() => undefined);
  const persistent = await storage?.persisted?.().catch(() => undefined);
  return { used: estimate?.usage, allowed: estimate?.quota, persistent };
}

/** Asks the browser to keep the records until the reader removes them. */
export const askToPersist = async (): Promise<boolean> =>
  (await navigator.storage?.persist?.().catch(() => false)) ?? false;
