// @ts-check
/**
 * The entries this browser holds until the server has them, in IndexedDB: they outlive a reload, a crash and a flat battery.
 */

/**
 * waiting: to be sent. look: the server said no, a person decides. off: taken off by hand, can be put back.
 * @typedef {"waiting" | "look" | "off"} State
 */

/**
 * @typedef {object} Entry
 * @property {number} [order] counts up; given by the store
 * @property {string} key UUID by which the server knows the entry again
 * @property {string} group entries of one group are sent one after the other
 * @property {string} action address it is posted to
 * @property {string} form the form it was typed into, see outbox.js
 * @property {string} words what is said of it
 * @property {[string, string | File][]} fields
 * @property {string} page address of the page it was made on
 * @property {string} title heading of that page
 * @property {number} at when it was made, ms since 1970
 * @property {State} state
 * @property {string} [answer] the server's words where it said no
 * @property {string} [href] where the server says it can be looked at
 * @property {number} [offAt] when it was taken off
 */

/** @type {Promise<IDBDatabase> | null} */
let opened = null;

/** @returns {Promise<IDBDatabase>} */
function open() {
  opened ??= new Promise((resolve, reject) => {
    const request = indexedDB.open("tickover", 1);
    request.onupgradeneeded = () => {
      const entries = request.result.createObjectStore("entries", { keyPath: "order", autoIncrement: true });
      entries.createIndex("key", "key", { unique: true });
      request.result.createObjectStore("lease");
    };
    request.onsuccess = () => {
      // A newer page in another tab may want to change the store: make way, and open it again when next needed.
      request.result.onversionchange = () => {
        request.result.close();
        opened = null;
      };
      request.result.onclose = () => (opened = null);
      resolve(request.result);
    };
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new Error("The store is held by an older page."));
  });
  opened.catch(() => (opened = null));
  return opened;
}

/**
 * Runs one transaction; done only when it is on the disk, as far as the browser will say.
 * @template T
 * @param {"entries" | "lease"} name
 * @param {IDBTransactionMode} mode
 * @param {(store: IDBObjectStore, answer: (value: T) => void) => void} work
 * @returns {Promise<T>}
 */
async function run(name, mode, work) {
  const database = await open();
  return new Promise((resolve, reject) => {
    /** @type {T} */
    let value;
    const transaction = database.transaction(name, mode, { durability: "strict" });
    transaction.oncomplete = () => resolve(value);
    transaction.onabort = () => reject(transaction.error ?? new Error("The store gave up."));
    work(transaction.objectStore(name), (answer) => (value = answer));
  });
}

/**
 * Adds an entry. It is safe from a reload when this has returned.
 * @param {Entry} entry
 * @returns {Promise<void>}
 */
export function add(entry) {
  return run("entries", "readwrite", (store) => void store.add(entry));
}

/** @returns {Promise<Entry[]>} all entries, oldest first */
export function all() {
  return run("entries", "readonly", (store, answer) => {
    const request = store.getAll();
    request.onsuccess = () => answer(request.result);
  });
}

/**
 * Changes an entry that is still there.
 * @param {string} key
 * @param {Partial<Entry>} change
 * @returns {Promise<void>}
 */
export function change(key, change) {
  return run("entries", "readwrite", (store) => {
    const request = store.index("key").get(key);
    request.onsuccess = () => {
      if (request.result) {
        store.put({ ...request.result, ...change });
      }
    };
  });
}

/**
 * Forgets an entry the server has, or one taken off long ago.
 * @param {string} key
 * @returns {Promise<void>}
 */
export function forget(key) {
  return run("entries", "readwrite", (store) => {
    const request = store.index("key").getKey(key);
    request.onsuccess = () => {
      if (request.result !== undefined) {
        store.delete(request.result);
      }
    };
  });
}

/**
 * Takes or renews the right to send, for browsers without locks (plain http).
 * @param {string} holder
 * @param {number} forMs
 * @returns {Promise<boolean>} whether it is ours
 */
export function lease(holder, forMs) {
  return run("lease", "readwrite", (store, answer) => {
    const request = store.get("sender");
    request.onsuccess = () => {
      const now = Date.now();
      const held = request.result;
      // A lease from the future means that the clock was set back: it binds nobody.
      const taken = held && held.holder !== holder && held.until > now && held.until - now <= forMs;
      if (!taken) {
        store.put({ holder, until: now + forMs }, "sender");
      }
      answer(!taken);
    };
  });
}

/**
 * @param {string} holder
 * @returns {Promise<void>}
 */
export function release(holder) {
  return run("lease", "readwrite", (store) => {
    const request = store.get("sender");
    request.onsuccess = () => {
      if (request.result?.holder === holder) {
        store.delete("sender");
      }
    };
  });
}
