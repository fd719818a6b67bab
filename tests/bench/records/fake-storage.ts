/** A store like the browser's: its keys are its own properties, and it may have no room. */
export class FakeStorage {
  #texts = this as unknown as Record<string, string>;
  /** How many characters it holds. */
  #most = Number.POSITIVE_INFINITY;
  getItem(key: string): string | null {
    return this.#texts[key] ?? null;
  }
  setItem(key: string, text: string): void {
    const others = Object.keys(this).filter((other) => other !== key);
    const used = others.reduce((sum, other) => sum + this.#texts[other]!.length, 0);
    if (used + text.length > this.#most) throw new DOMException('full', 'QuotaExceededError');
    this.#texts[key] = text;
  }
  removeItem(key: string): void {
    delete this.#texts[key];
  }
  hold(most: number): void {
    this.#most = most;
  }
}
