/** Small values by key, kept in one JSON file: the one interface over the stores of both hosts. */
export interface KeyValueStore {
  get(key: string): unknown;
  set(key: string, value: unknown): void;
}
