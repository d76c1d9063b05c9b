// @ts-check
/**
 * Sends what waits, oldest first within each group, and again with the same key until the server has answered for it.
 * The server keeps one entry a key, so an answer lost on the way costs nothing.
 */
import { all, change, forget } from "./store.js";
import { inTurn } from "./turn.js";

const shortestWaitMs = 1_000;
const longestWaitMs = 30_000;
const otherTabMs = 3_000;
const answerWithinMs = 30_000;
/** Slowest Wi-Fi a photograph must still get through. */
const slowestBytesPerMs = 50;

/** What our server says of an entry that needs no more sending; "nothing" is one that changed nothing, such as a second undo. */
const answeredFor = new Set(["kept", "keptBefore", "nothing"]);
/** Answers that say "not now" though the server was reached. */
const later = new Set([401, 403, 408, 425, 429]);

/**
 * What the page shows. `fault` is why the last try failed; `since` is when tries began to fail.
 * @typedef {object} Situation
 * @property {import("./store.js").Entry[]} entries
 * @property {boolean} sending
 * @property {"" | "wifi" | "server" | "notLetIn"} fault
 * @property {number} since ms since 1970
 */

/** @type {Situation} */
const now = { entries: [], sending: false, fault: "", since: 0 };
/** @type {((situation: Situation) => void)[]} */
const watchers = [];
/** @type {BroadcastChannel | null} */
const tabs = "BroadcastChannel" in globalThis ? new BroadcastChannel("tickover-outbox") : null;
let waitMs = shortestWaitMs;
/** @type {ReturnType<typeof setTimeout> | undefined} */
let timer;
let busy = false;
let again = false;

/** @param {(situation: Situation) => void} watcher */
export function watch(watcher) {
  watchers.push(watcher);
}

/** Begins to send and listens for the moments when it is worth another try. */
export function startSending() {
  window.addEventListener("online", sendNow);
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && sendNow());
  document.addEventListener("tickover:swapped", sendNow);
  window.addEventListener("offline", () => void failed("wifi"));
  if (tabs) {
    tabs.onmessage = (event) => {
      if (event.data === "changed") {
        void look();
      } else if (event.data?.kept) {
        document.dispatchEvent(new CustomEvent("tickover:kept", { detail: event.data.kept }));
      }
    };
  }
  sendNow();
}

/** Tries at once, whatever wait was under way. */
export function sendNow() {
  waitMs = shortestWaitMs;
  clearTimeout(timer);
  void send();
}

/** Reads the store again and shows it, here and in the other tabs. */
export async function changed() {
  tabs?.postMessage("changed");
  await look();
}

async function look() {
  now.entries = await all().catch(() => now.entries);
  for (const watcher of watchers) {
    watcher(now);
  }
}

async function send() {
  if (busy) {
    again = true;
    return;
  }
  busy = true;
  again = false;
  let mine = true;
  try {
    mine = await inTurn(sendAll);
  } catch {
    // The store is out of reach for the moment; the next try finds it or says so again.
  } finally {
    busy = false;
    now.sending = false;
    await look();
  }
  const left = now.entries.some((e) => e.state === "waiting");
  if (!left && navigator.onLine) {
    reached();
  }
  clearTimeout(timer);
  if (again) {
    void send();
  } else if (left) {
    timer = setTimeout(() => void send(), mine ? waitMs : otherTabMs);
    waitMs = mine ? Math.min(longestWaitMs, waitMs * 2) : waitMs;
  }
}

async function sendAll() {
  /** Groups whose first entry has to wait. @type {Set<string>} */
  const held = new Set();
  for (;;) {
    await look();
    const entry = now.entries.find((e) => e.state === "waiting" && !held.has(e.group));
    if (!entry) {
      return;
    }
    now.sending = now.fault === "";
    for (const watcher of watchers) {
      watcher(now);
    }
    const outcome = await post(entry);
    if (outcome === "away") {
      return;
    }
    if (outcome === "later") {
      held.add(entry.group);
    }
  }
}

/**
 * @param {import("./store.js").Entry} entry
 * @returns {Promise<"done" | "later" | "away">}
 */
async function post(entry) {
  /** @type {Response} */
  let answer;
  /** @type {{ status?: string, words?: string, number?: unknown, href?: string } | null} */
  let said;
  try {
    answer = await fetch(entry.action, {
      method: "POST", body: bodyOf(entry), headers: { "Tickover-Outbox": entry.key, Accept: "application/json" },
      cache: "no-store", credentials: "same-origin", redirect: "manual", signal: AbortSignal.timeout(patience(entry)),
    });
    said = await readJson(answer);
  } catch {
    await failed(navigator.onLine ? "server" : "wifi");
    return "away";
  }
  if (answer.ok && said !== null && answeredFor.has(said.status ?? "")) {
    reached();
    await forget(entry.key);
    const detail = { key: entry.key, words: said.words ?? "", number: said.number ?? null, href: said.href ?? null };
    document.dispatchEvent(new CustomEvent("tickover:kept", { detail }));
    tabs?.postMessage({ kept: detail });
    tabs?.postMessage("changed");
    return "done";
  }
  return refused(entry, answer, said);
}

/**
 * @param {import("./store.js").Entry} entry
 * @param {Response} answer
 * @param {{ words?: string, title?: string, href?: string } | null} said
 * @returns {Promise<"done" | "later" | "away">}
 */
async function refused(entry, answer, said) {
  if (answer.status === 401 || answer.status === 403) {
    if (answer.status === 401) {
      document.dispatchEvent(new CustomEvent("tickover:notLetIn"));
    }
    await failed("notLetIn");
    return "away";
  }
  // A good answer that is not ours, or a way elsewhere, comes from something between us and the server: keep, and ask again.
  if (answer.status < 400 || answer.status >= 500 || later.has(answer.status)) {
    await failed("server");
    return "later";
  }
  reached();
  await change(entry.key, { state: "look", answer: said?.words ?? said?.title ?? wordsFor(answer.status), ...(said?.href ? { href: said.href } : {}) });
  tabs?.postMessage("changed");
  return "done";
}

/** @param {import("./store.js").Entry} entry */
function bodyOf(entry) {
  const body = new FormData();
  for (const [name, value] of entry.fields) {
    body.append(name, value);
  }
  body.set("key", entry.key);
  return body;
}

/** @param {import("./store.js").Entry} entry */
function patience(entry) {
  const bytes = entry.fields.reduce((sum, [, value]) => sum + (typeof value === "string" ? value.length : value.size), 0);
  return answerWithinMs + bytes / slowestBytesPerMs;
}

/** @param {Response} answer */
async function readJson(answer) {
  const type = answer.headers.get("Content-Type") ?? "";
  return /^application\/(problem\+)?json\b/.test(type) ? answer.json() : null;
}

/** @param {number} status */
function wordsFor(status) {
  return status === 413 ? "It is too big for the server." : `The server would not take it (answer ${status}).`;
}

/** @param {Situation["fault"]} fault */
async function failed(fault) {
  if (now.fault === "") {
    now.since = Date.now();
  }
  now.fault = fault;
  now.sending = false;
  await look();
}

function reached() {
  now.fault = "";
  now.since = 0;
  waitMs = shortestWaitMs;
}
