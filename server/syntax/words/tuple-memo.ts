/**
 * What was found out of several things together, by their identity and order. Kept in two generations of so many bytes
 * in all: what was not asked for since the young one was begun goes with the old one.
 */
export class TupleMemo<T extends NonNullable<unknown> | null> {
  private young = new Node<T>();
  private old: Node<T> | undefined;
  private bytes = 0;

  /** @param bytesOf about how many bytes a value takes */
  constructor(
    private readonly mostBytes: number,
    private readonly bytesOf: (value: T) => number,
  ) {}

  /** @param keys of which the first `count` are meant, so that an array can be used again */
  get(keys: readonly object[], count: number): T | undefined {
    const found = valueIn(this.young, keys, count);
    if (found !== undefined || !this.old) return found;
    const old = valueIn(this.old, keys, count);
    if (old !== undefined) this.set(keys, count, old);
    return old;
  }

  set(keys: readonly object[], count: number, value: T): void {
    if (this.bytes > this.mostBytes / 2) {
      this.old = this.young;
      this.young = new Node();
      this.bytes = 0;
    }
    let node = this.young;
    for (let i = 0; i < count; i++) {
      let next = node.next?.get(keys[i]!);
      if (!next) {
        next = new Node();
        node.next ??= new Map();
        node.next.set(keys[i]!, next);
        this.bytes += NODE_BYTES;
      }
      node = next;
    }
    node.value = value;
    this.bytes += this.bytesOf(value);
  }
}

class Node<T> {
  next: Map<object, Node<T>> | undefined;
  value: T | undefined;
}

/** Of a node, its map, and its place in another's. */
const NODE_BYTES = 300;

function valueIn<T>(root: Node<T>, keys: readonly object[], count: number): T | undefined {
  let node: Node<T> | undefined = root;
  for (let i = 0; i < count && node; i++) node = node.next?.get(keys[i]!);
  return node?.value;
}
