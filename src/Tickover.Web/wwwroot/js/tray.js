// @ts-check
/** The strip's word on what is still here, and the list behind it. Never red and never in the way: the work goes on. */
import { change, forget } from "./store.js";
import { changed, sendNow, watch } from "./sender.js";
import { keepsNothing } from "./outbox.js";
import { card } from "./tray-card.js";

const monthMs = 30 * 24 * 3600 * 1000;

/** Shows the tray and keeps it up to date. */
export function showTray() {
  const button = document.getElementById("tray");
  const list = document.getElementById("tray-list");
  if (!(button instanceof HTMLButtonElement) || !(list instanceof HTMLDialogElement)) {
    return;
  }
  button.hidden = false;
  button.addEventListener("click", () => list.showModal());
  list.addEventListener("click", (event) => void act(event.target));
  watch((situation) => {
    say(button, situation);
    if (situation.entries.some((e) => e.state === "off" && Date.now() - (e.offAt ?? 0) > monthMs)) {
      void tidy(situation.entries);
    }
    fill(list, situation.entries);
  });
}

/**
 * @param {HTMLButtonElement} button
 * @param {import("./sender.js").Situation} situation
 */
function say(button, situation) {
  const words = wordsFor(situation);
  const count = situation.entries.filter((e) => e.state !== "off").length;
  put(button.querySelector("[data-tray-words]"), words);
  put(button.querySelector("[data-tray-count]"), count === 0 ? "" : String(count));
  put(document.getElementById("tray-status"), words);
  button.dataset["state"] = count === 0 ? "sent" : "kept";
}

/** Said again only when it changed, or a screen reader would repeat it. @param {Element | null} element @param {string} text */
function put(element, text) {
  if (element !== null && element.textContent !== text) {
    element.textContent = text;
  }
}

/** @param {import("./sender.js").Situation} situation */
function wordsFor({ entries, sending, fault, since }) {
  const waiting = entries.filter((e) => e.state === "waiting").length;
  const looks = entries.filter((e) => e.state === "look").length;
  const look = looks === 0 ? "" : looks === 1 ? "1 needs a look" : `${looks} need a look`;
  if (waiting === 0) {
    return look !== "" ? look : keepsNothing() ? "This browser keeps nothing: entries go straight to the server" : "All sent";
  }
  const time = new Date(since).toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" });
  const why = { wifi: `, no Wi-Fi since ${time}`, server: `, no answer since ${time}`, notLetIn: ", this device is not let in", "": "" }[fault];
  const kept = sending ? `Sending ${waiting}` : `${waiting} kept here${why}`;
  return look === "" ? kept : `${kept}; ${look}`;
}

/**
 * @param {HTMLDialogElement} list
 * @param {import("./store.js").Entry[]} entries
 */
function fill(list, entries) {
  const groups = /** @type {const} */ (["look", "waiting", "off"]);
  for (const state of groups) {
    const part = list.querySelector(`[data-tray-part="${state}"]`);
    const place = part?.querySelector("ol");
    const mine = entries.filter((e) => e.state === state);
    if (part instanceof HTMLElement && place) {
      part.hidden = mine.length === 0;
      renew(place, mine);
    }
  }
  const empty = list.querySelector("[data-tray-empty]");
  if (empty instanceof HTMLElement) {
    empty.hidden = entries.length > 0;
  }
}

/**
 * Cards that stay are not touched, so that the focus stays on its button.
 * @param {Element} place
 * @param {import("./store.js").Entry[]} entries
 */
function renew(place, entries) {
  const keys = new Set(entries.map((e) => e.key));
  for (const old of [...place.children]) {
    if (!keys.has(old.getAttribute("data-entry") ?? "")) {
      old.remove();
    }
  }
  for (const entry of entries) {
    if (place.querySelector(`:scope > [data-entry="${CSS.escape(entry.key)}"]`) === null) {
      place.append(card(entry));
    }
  }
}

/** @param {EventTarget | null} pressed */
async function act(pressed) {
  const button = pressed instanceof Element ? pressed.closest("button[data-do]") : null;
  const key = button?.closest("[data-entry]")?.getAttribute("data-entry") ?? null;
  const doing = button?.getAttribute("data-do");
  if (doing === "now") {
    sendNow();
  } else if (key !== null && (doing === "again" || doing === "back")) {
    await change(key, { state: "waiting" });
    await changed();
    sendNow();
  } else if (key !== null && doing === "off") {
    await change(key, { state: "off", offAt: Date.now() });
    await changed();
    const undo = document.querySelector(`#tray-list [data-entry="${CSS.escape(key)}"] [data-do="back"]`);
    if (undo instanceof HTMLElement) {
      undo.focus();
    }
  }
}

/** @param {import("./store.js").Entry[]} entries */
async function tidy(entries) {
  for (const entry of entries.filter((e) => e.state === "off" && Date.now() - (e.offAt ?? 0) > monthMs)) {
    await forget(entry.key);
  }
}
