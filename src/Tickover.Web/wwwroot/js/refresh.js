// @ts-check
/** Brings the parts of the page marked data-refresh up to date after an entry has reached the server, without a reload. */
import { fields, isChanged } from "./draft.js";

/** Several entries that go out together cost one fetch. */
const settleMs = 150;

/** @type {ReturnType<typeof setTimeout> | undefined} */
let timer;
/** @type {AbortController | null} */
let underWay = null;

/** Follows what the outbox reports. */
export function followKept() {
  document.addEventListener("tickover:kept", () => {
    clearTimeout(timer);
    timer = setTimeout(() => void refresh(), settleMs);
  });
}

/** Fetches this page again and swaps the marked parts in. */
export async function refresh() {
  if (document.querySelector("[data-refresh][id]") === null) {
    return;
  }
  underWay?.abort();
  const mine = (underWay = new AbortController());
  try {
    const answer = await fetch(location.href, { headers: { Accept: "text/html" }, cache: "no-store", signal: mine.signal });
    // An older copy from the service worker would take off the page what has just been kept.
    if (!answer.ok || answer.redirected || answer.headers.has("X-Tickover-As-Of")) {
      return;
    }
    const fresh = new DOMParser().parseFromString(await answer.text(), "text/html");
    for (const old of document.querySelectorAll("[data-refresh][id]")) {
      const next = fresh.getElementById(old.id);
      if (next !== null && !old.isEqualNode(next)) {
        swap(old, next);
      }
    }
    document.dispatchEvent(new CustomEvent("tickover:refreshed"));
  } catch {
    // Away again: the page stays as it is, the entry is with the server.
  }
}

/**
 * A form at which somebody is at work moves over as it is, with its photograph, its arrows and its keypad.
 * @param {Element} old
 * @param {Element} next
 */
function swap(old, next) {
  const focused = old.contains(document.activeElement) ? document.activeElement : null;
  const caret = caretOf(focused);
  const path = focused === null ? null : pathOf(focused);
  const open = [...old.querySelectorAll("details[open]")].map(pathOf);
  // Paired before any is moved: forms alike are told apart by their place.
  const atWork = [...old.querySelectorAll("form")].filter(isAtWork).map((form) => ({ form, fresh: sameForm(form, old, next) }));
  for (const { form, fresh } of atWork) {
    fresh?.replaceWith(form);
  }
  old.replaceWith(document.adoptNode(next));
  for (const place of open) {
    find(place)?.setAttribute("open", "");
  }
  const place = focused?.isConnected ? focused : find(path);
  if (place instanceof HTMLElement && place !== document.activeElement) {
    place.focus({ preventScroll: true });
    if (caret !== null && (place instanceof HTMLInputElement || place instanceof HTMLTextAreaElement)) {
      place.setSelectionRange(caret, caret);
    }
  }
}

/** @param {HTMLFormElement} form */
function isAtWork(form) {
  const hasFile = [...form.elements].some((f) => f instanceof HTMLInputElement && f.type === "file" && (f.files?.length ?? 0) > 0);
  return hasFile || form.contains(document.activeElement) || fields(form).some(isChanged);
}

/**
 * @param {HTMLFormElement} form
 * @param {Element} old
 * @param {Element} next
 * @returns {HTMLFormElement | null} the same form in the next version of the page
 */
function sameForm(form, old, next) {
  const alike = (/** @type {Element} */ region) => [...region.querySelectorAll("form")].filter((f) => f.getAttribute("action") === form.getAttribute("action") && f.dataset["outbox"] === form.dataset["outbox"]);
  return alike(next)[alike(old).indexOf(form)] ?? null;
}

/** @param {Element | null} element */
function caretOf(element) {
  try {
    return element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement ? element.selectionStart : null;
  } catch {
    return null;
  }
}

/**
 * A selector that finds the same element in the next version of the page.
 * @param {Element | null} element
 * @returns {string}
 */
function pathOf(element) {
  if (element === null || element === document.body) {
    return "body";
  }
  if (element.id !== "") {
    return `#${CSS.escape(element.id)}`;
  }
  const same = [...(element.parentElement?.children ?? [])].filter((e) => e.localName === element.localName);
  const own = element.localName + (element.hasAttribute("name") ? `[name="${CSS.escape(element.getAttribute("name") ?? "")}"]` : `:nth-of-type(${same.indexOf(element) + 1})`);
  return `${pathOf(element.parentElement)} > ${own}`;
}

/** @param {string | null} path */
function find(path) {
  return path === null ? null : document.querySelector(path);
}
