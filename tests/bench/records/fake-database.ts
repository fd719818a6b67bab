type Row = Readonly<Record<string, unknown>> & { readonly id: string };

/** A store of the database, in memory: what goes in and comes out are copies, as in a browser. */
class FakeStore {
  rows = new Map<string, Row>();
  get = async (id: string) => structuredClone(this.rows.get(id));
  getAll = async () => structuredClone([...this.rows.values()]);
  put = async (row: Row) => void this.rows.set(row.id, structuredClone(row));
  delete = async (id: string) => void this.rows.delete(id);
  clear = async () => this.rows.clear();
  index = (name: string) => ({
    getAll: async (value: unknown) => (await this.getAll()).filter((row) => row[name] === value),
  });
}

const NAMES = ['batches', 'photos', 'bin', 'aside'] as const;
type Name = (typeof NAMES)[number];

/** As much of a database as the store of records asks for. It knows no failed writes. */
export class FakeDatabase {
  stores = Object.fromEntries(NAMES.map((name) => [name, new FakeStore()])) as Record<
    Name,
    FakeStore
  >;
  getAll = (name: Name) => this.stores[name].getAll();
  get = (name: Name, id: string) => this.stores[name].get(id);
  getAllFromIndex = (name: Name, index: string, value: unknown) =>
    this.stores[name].index(index).getAll(value);
  clear = (name: Name) => this.stores[name].clear();
  transaction = (names: Name | readonly Name[]) => ({
    objectStore: (name: Name) => {
      if (![names].flat().includes(name)) throw new Error(`${name} is not in this transaction`);
      return this.stores[name];
    },
    store: this.stores[[names].flat()[0]!],
    done: Promise.resolve(),
  });
}
