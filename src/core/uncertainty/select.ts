/** Shorter parts are partitioned directly, because sampling them would save nothing. */
const SAMPLED = 600;

/**
 * The value that would be at index `place` if the values were sorted, found without sorting them
 * all. The list is partitioned about one of its values, and only the part that contains the index
 * is partitioned again (Hoare's quickselect). In a long list the pivot is chosen from a sample near
 * the index, so that one partition leaves little (Floyd–Rivest). The values are reordered: those
 * before `place` are no larger, those after no smaller. They must be numbers, and `place` a valid
 * index between `low` and `high`.
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
