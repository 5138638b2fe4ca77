/** A heap of whole numbers with keys, the least key first; of equal keys, the lesser number. It is used again and again. */
export class MinHeap {
  readonly #keys: number[] = [];
  readonly #items: number[] = [];
  #size = 0;

  get size(): number {
    return this.#size;
  }

  /** The least key; meaningless where the heap is empty. */
  get leastKey(): number {
    return this.#keys[0]!;
  }

  clear(): void {
    this.#size = 0;
  }

  push(item: number, key: number): void {
    let at = this.#size++;
    while (at > 0) {
      const up = (at - 1) >> 1;
      if (!this.#comesBefore(key, item, up)) break;
      this.#move(up, at);
      at = up;
    }
    this.#keys[at] = key;
    this.#items[at] = item;
  }

  /** Takes the item with the least key. */
  pop(): number {
    const item = this.#items[0]!;
    const last = --this.#size;
    const lastKey = this.#keys[last]!;
    const lastItem = this.#items[last]!;
    let at = 0;
    for (let down = 1; down < last; down = 2 * at + 1) {
      if (down + 1 < last && this.#comesBefore(this.#keys[down + 1]!, this.#items[down + 1]!, down)) down++;
      if (this.#comesBefore(lastKey, lastItem, down)) break;
      this.#move(down, at);
      at = down;
    }
    this.#keys[at] = lastKey;
    this.#items[at] = lastItem;
    return item;
  }

  #comesBefore(key: number, item: number, at: number): boolean {
    const other = this.#keys[at]!;
    return key < other || (key === other && item < this.#items[at]!);
  }

  #move(from: number, to: number): void {
    this.#keys[to] = this.#keys[from]!;
    this.#items[to] = this.#items[from]!;
  }
}
