/**
 * The value that would stand at `place` (0 first) were the values in rising order, found without
 * sorting them all: the list is parted about one of its values, and only the part that holds the place
 * is parted again (Hoare's selection). The values end up in another order. They must be numbers, and
 * `place` one of theirs.
 * @source none: it picks a value
 */
export function select(values: Float64Array, place: number): number {
  let [low, high] = [0, values.length - 1];
  while (low < high) {
    const about = values[(low + high) >> 1]!;
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
