/** Parts shorter than this are parted as they are: a sample of them would save nothing. */
const SAMPLED = 600;

/**
 * The value that would stand at `place` (0 first) were the values in rising order, found without
 * sorting them all: the list is parted about one of its values, and only the part that holds the place
 * is parted again (Hoare's selection). In a long list that value is picked in a sample, near the place
 * itself, so that one parting leaves little (Floyd and Rivest). The values end up in another order: what
 * comes before `place` is no larger, what comes after no smaller. They must be numbers, and `place` one
 * of theirs, between `low` and `high`.
 * @source none: it picks a value
 */
export function select(values: number[], place: number, low = 0, high = values.length - 1): number {
  while (low < high) {
    const size = high - low + 1;
    if (size > SAMPLED) {
      const before = (place - low + 1) / size;
      const sample = 0.5 * size ** (2 / 3);
      const spread = 0.5 * Math.sqrt(Math.log(size) * sample * (1 - sample / size));
      const aim = place + Math.sign(before - 0.5) * spread;
      select(
        values,
        place,
        Math.max(low, Math.min(place, Math.floor(aim - before * sample))),
        Math.min(high, Math.max(place, Math.floor(aim + (1 - before) * sample))),
      );
    }
    const about = values[place]!;
    let [i, j] = [low, high];
    while (i <= j) {
      while (values[i]! < about) i++;
      while (values[j]! > about) j--;
      if (i > j) break;
      const moved = values[i]!;
      values[i++] = values[j]!;
      values[j--] = moved;
    }
    if (place <= j) high = j;
    else if (place >= i) low = i;
    else break;
  }
  return values[place]!;
}
