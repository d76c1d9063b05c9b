// @ts-check
/**
 * The keypad of a round of balancing: after Keep the next barrel is up at once, whether the server answers or not. What was entered
 * is in the outbox; this only follows it. The arithmetic of which barrel is next is in round.js.
 */
import { newKey } from "./key.js";
import { change } from "./store.js";
import { changed, watch } from "./sender.js";
import { figureIn } from "./plausible.js";
import { compared, follow, leftOf } from "./round.js";
import { field, marks, measure, ofMean } from "./round-show.js";

/** A barrel whose sent reading is still not on the page after so many looks was undone meanwhile. */
const mostLooks = 2;
const wide = window.matchMedia("(min-width: 841px)");

/** @type {Map<string, import("./round.js").Entered>} */
const entered = new Map();
/** @type {Set<string>} */
let waiting = new Set();
/** @type {number | null} */
let chosen = null;
let anew = "";
let unbegun = "";
let shownRound = "";

/** Follows the page of rounds, where this is one. */
export function followRounds() {
  const form = padForm();
  if (document.querySelector(".bench.balance") !== null) {
    document.addEventListener("click", (event) => follows(event));
  }
  if (form === null) {
    return;
  }
  recall();
  watch(({ entries }) => note(form, entries));
  document.addEventListener("tickover:refreshed", () => looked(form));
  form.addEventListener("submit", () => stamp(form), { capture: true });
  form.addEventListener("input", () => say(form));
  document.addEventListener("click", (event) => pressed(form, event));
  place(form);
  if (wide.matches && !pad()?.matches(".waits, .done")) {
    valueOf(form).focus({ preventScroll: true });
    // The keypad that opens scrolls itself into view; what is next to turn stands above it.
    if (location.hash === "") {
      window.scrollTo(0, 0);
    }
  }
}

/** @returns {HTMLFormElement | null} */
function padForm() {
  const form = document.querySelector("form[data-balance-pad]");
  return form instanceof HTMLFormElement ? form : null;
}

function pad() {
  return document.getElementById("pad");
}

/** @param {HTMLFormElement} form */
function valueOf(form) {
  return field(form, "value");
}

/**
 * Readings and acts that wait here, and those sent that the page does not show yet.
 * @param {HTMLFormElement} form
 * @param {import("./store.js").Entry[]} entries
 */
function note(form, entries) {
  const here = new URL(form.action, location.href).pathname;
  const mine = entries.filter((e) => e.action === here || e.action === `${here}/acts`);
  waiting = new Set(mine.filter((e) => e.state === "waiting").map((e) => e.key));
  for (const entry of mine) {
    if (entry.state !== "waiting") {
      entered.delete(entry.key);
    } else if (!entered.has(entry.key)) {
      entered.set(entry.key, enteredOf(entry, here));
      chosen = null;
    }
  }
  place(form);
}

/**
 * @param {import("./store.js").Entry} entry
 * @param {string} here
 * @returns {import("./round.js").Entered}
 */
function enteredOf(entry, here) {
  const text = (/** @type {string} */ name) => {
    const value = entry.fields.find(([n]) => n === name)?.[1];
    return typeof value === "string" ? value : "";
  };
  const isReading = entry.action === here;
  return {
    key: entry.key, kind: isReading ? "reading" : "act", round: text("round"), barrel: Number(text("barrel")), value: text("noReading") === "" ? text("value") : "none",
    then: numbers(text("then")), measure: text(isReading ? "measure" : "thenMeasure"), expect: text("expect"), seen: 0,
  };
}

/** The page has come anew: what it shows need not be kept in mind. @param {HTMLFormElement} form */
function looked(form) {
  for (const one of entered.values()) {
    one.seen += waiting.has(one.key) ? 0 : 1;
    if (one.seen > mostLooks) {
      entered.delete(one.key);
    }
  }
  place(form);
}

/** @returns {import("./round.js").Under} */
function server() {
  const plan = document.getElementById("balance-plan")?.dataset ?? {};
  const arrived = new Set((plan["arrived"] ?? "").split(" "));
  for (const key of [...entered.keys()]) {
    // The server writes a number without hyphens.
    if (arrived.has(key) || arrived.has(key.replaceAll("-", ""))) {
      entered.delete(key);
    }
  }
  return {
    round: plan["round"] ?? "", measure: plan["measure"] ?? "", sequence: numbers(plan["sequence"] ?? ""), read: numbers(plan["read"] ?? ""),
    expect: plan["expect"] ?? "", turn: plan["turn"] === "true",
  };
}

/** @param {string} text */
function numbers(text) {
  return text.split(" ").filter((t) => t !== "").map(Number);
}

/** @returns {number[]} every barrel once and the first again */
function whole() {
  const all = new Set([...document.querySelectorAll('[data-part^="barrel:"]')].map((p) => Number(p.getAttribute("data-part")?.slice(7))));
  const order = [...all].sort((a, b) => a - b);
  return order.slice(0, 1).reduce((list, first) => [...list, first], order);
}

/** Puts the keypad on the barrel that is next. @param {HTMLFormElement} form */
function place(form) {
  const now = follow(server(), entered.values(), whole(), anew);
  remember();
  if (now.round === "") {
    unbegun ||= newKey();
  } else {
    unbegun = "";
  }
  const left = leftOf(now.sequence, now.read);
  const barrel = chosen ?? left[0] ?? null;
  const acted = [...entered.values()].some((e) => e.kind === "act");
  const waits = now.turn && chosen === null;
  pad()?.classList.toggle("waits", waits);
  pad()?.classList.toggle("done", barrel === null);
  document.getElementById("next-move")?.classList.toggle("acted", acted);
  title(waits ? undefined : barrel, now, left);
  marks(entered.values(), waits ? null : barrel);
  measure(form, now.measure);
  if (barrel !== null) {
    field(form, "barrel").value = String(barrel);
    const round = now.round === "" ? unbegun : now.round;
    field(form, "round").value = round;
    if (shownRound !== round && now.read.length === 0) {
      field(form, "rpm").defaultValue = "";
    }
    shownRound = round;
  }
  form.dataset["expect"] = now.expect;
  say(form);
}

/**
 * @param {number | null | undefined} barrel null where all are read, undefined where something is to be done first
 * @param {import("./round.js").Under} now
 * @param {number[]} left
 */
function title(barrel, now, left) {
  const line = document.querySelector("[data-pad-title]");
  const isProof = now.read.length > 0 && left.length === 1 && barrel === now.sequence[0] && now.sequence.length > 1;
  const isHere = [...entered.keys()].some((k) => waiting.has(k));
  if (line !== null) {
    line.textContent = barrel === undefined ? (document.querySelector("#next-move form") === null ? "Read again" : "After the move") : barrel === null ? (isHere ? "Round read. Kept here; the next move follows when the server answers" : "Round read") : `Barrel ${barrel}${isProof ? " again" : ""} reads`;
  }
  const bar = document.querySelector("[data-pad-sheet]");
  if (bar !== null) {
    bar.textContent = barrel === undefined ? "Read again" : barrel === null ? "Round read" : `Key in barrel ${barrel}`;
  }
  const last = lastReading();
  show("[data-pad-repeat]", last !== null || now.read.length > 0);
  show("[data-pad-back]", last !== null && waiting.has(last.key));
}

function lastReading() {
  return [...entered.values()].filter((e) => e.kind === "reading").at(-1) ?? null;
}

/** @param {string} selector @param {boolean} isShown */
function show(selector, isShown) {
  const element = document.querySelector(selector);
  if (element instanceof HTMLElement) {
    element.hidden = !isShown;
  }
}

/** What the typed figure says, while it is typed. @param {HTMLFormElement} form */
function say(form) {
  const line = form.querySelector("[data-pad-said]");
  const figure = figureIn(valueOf(form).value);
  const said = figure === null ? null : (compared(form.dataset["expect"] ?? "", Number(field(form, "barrel").value), figure) ?? ofMean(figure));
  if (line !== null) {
    line.textContent = said?.words ?? "";
    line.className = `said${said === null ? "" : said.ok ? " ok" : " odd"}`;
  }
  const rpm = field(form, "rpm").value.trim();
  const at = document.querySelector("[data-pad-rpm]");
  if (at !== null) {
    at.textContent = rpm === "" ? "rpm not keyed" : `at ${rpm} rpm`;
  }
}

/** The speed stays for the next barrel until it is keyed anew; the moment is the tablet's. @param {HTMLFormElement} form */
function stamp(form) {
  field(form, "takenAt").value = new Date().toISOString();
  field(form, "rpm").defaultValue = field(form, "rpm").value;
}

/**
 * @param {HTMLFormElement} form
 * @param {MouseEvent} event
 */
function pressed(form, event) {
  const target = event.target instanceof Element ? event.target : null;
  const part = target?.closest("[data-part]")?.getAttribute("data-part") ?? "";
  if (part.startsWith("barrel:")) {
    event.preventDefault();
    choose(form, Number(part.slice(7)));
  } else if (target?.closest("[data-pad-repeat]")) {
    choose(form, lastReading()?.barrel ?? server().read.at(-1) ?? null);
  } else if (target?.closest("[data-pad-back]")) {
    void takeBack();
  } else if (target?.closest("[data-pad-new]")) {
    event.preventDefault();
    anew = newKey();
    place(form);
    valueOf(form).focus();
  } else if (target?.closest("[data-pad-sheet], [data-pad-close]")) {
    event.preventDefault();
    if (pad()?.matches(".waits, .done") && target.closest("[data-pad-sheet]") !== null) {
      anew = newKey();
      place(form);
    }
    pad()?.classList.toggle("sheet", target.closest("[data-pad-sheet]") !== null);
    valueOf(form).focus();
  }
}

/** A tap on a screw of the drawing, or a link to a folded part, unfolds what it leads to. @param {MouseEvent} event */
function follows(event) {
  const address = event.target instanceof Element ? event.target.closest("a")?.getAttribute("href") ?? "" : "";
  if (address.startsWith("#turn") || address === "#working") {
    open(address.slice(1));
  }
}

/** @param {HTMLFormElement} form @param {number | null} barrel */
function choose(form, barrel) {
  chosen = barrel;
  place(form);
  pad()?.classList.toggle("sheet", !wide.matches);
  valueOf(form).focus({ preventScroll: wide.matches });
}

/** @param {string} id */
function open(id) {
  for (let element = document.getElementById(id); element !== null; element = element.parentElement) {
    if (element instanceof HTMLDetailsElement) {
      element.open = true;
    }
  }
}

/** Takes the last reading that still waits here off the outbox. */
async function takeBack() {
  const last = lastReading();
  if (last !== null && waiting.has(last.key)) {
    await change(last.key, { state: "off", offAt: Date.now() });
    await changed();
  }
}

function store() {
  return `tickover-balance:${location.pathname}`;
}

// A reload between sending and showing must not step back a barrel.
function remember() {
  try {
    sessionStorage.setItem(store(), JSON.stringify([...entered.values()]));
  } catch {
    // Then only such a reload steps back, until the page comes anew.
  }
}

function recall() {
  try {
    for (const one of JSON.parse(sessionStorage.getItem(store()) ?? "[]")) {
      entered.set(one.key, one);
    }
  } catch {
    // Nothing kept in mind.
  }
}
