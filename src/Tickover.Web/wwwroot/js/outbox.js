// @ts-check
/**
 * Takes what is entered into a form marked data-outbox: keeps it here first, then lets the sender send it.
 * A browser that cannot keep anything posts the form as it would without this script.
 */
import { newKey } from "./key.js";
import { add } from "./store.js";
import { changed, sendNow, watch } from "./sender.js";
import { forgetDraft } from "./draft.js";
import { settled } from "./photo.js";

const notKept = "tickover-not-kept";
const shownAtOnce = 3;
/** Fields that are the page's own business: the key is ours, and the header stands in for the token. */
const leftOut = new Set(["key", "__RequestVerificationToken"]);
/** Forms whose entry is on its way into the store; a second press is the same press. @type {WeakSet<HTMLFormElement>} */
const atIt = new WeakSet();

/** Takes over the forms on this page, now and after a swap. */
export function followOutbox() {
  document.addEventListener("submit", (event) => {
    const form = event.target;
    if (!(form instanceof HTMLFormElement) || form.dataset["outbox"] === undefined || form.dataset["plain"] !== undefined) {
      return;
    }
    event.preventDefault();
    if (!atIt.has(form)) {
      atIt.add(form);
      void keep(form, event.submitter)
        .finally(() => atIt.delete(form))
        .then((kept) => (kept ? changed().then(sendNow) : undefined));
    }
  });
  watch(({ entries }) => showKept(entries));
  document.addEventListener("tickover:refreshed", () => void changed());
}

/**
 * Whether the last entry could not be kept here and went straight to the server.
 * @returns {boolean}
 */
export function keepsNothing() {
  try {
    return sessionStorage.getItem(notKept) !== null;
  } catch {
    return true;
  }
}

/**
 * @param {HTMLFormElement} form
 * @param {HTMLElement | null} submitter
 * @returns {Promise<boolean>} whether it is kept here
 */
async function keep(form, submitter) {
  await settled(form);
  const typed = fieldsOf(form, submitter);
  const key = newKey();
  try {
    await add({
      key, fields: typed, state: "waiting", at: Date.now(), form: nameOf(form), action: addressOf(form, submitter),
      group: form.dataset["outboxGroup"] ?? addressOf(form, null), words: wordsOf(form, typed),
      page: location.pathname + location.search, title: document.querySelector("h1")?.textContent?.trim() ?? document.title,
    });
  } catch {
    // Not before this press is done with: a form ignores a press while it is still telling of the last one.
    setTimeout(() => postPlainly(form, submitter, key));
    return false;
  }
  askToPersist();
  clear(form, submitter, typed);
  return true;
}

/**
 * @param {HTMLFormElement} form
 * @param {HTMLElement | null} submitter
 * @returns {[string, string | File][]}
 */
function fieldsOf(form, submitter) {
  /** @type {[string, string | File][]} */
  const fields = [];
  new FormData(form, submitter).forEach((value, name) => {
    const emptyFile = typeof value !== "string" && value.size === 0 && value.name === "";
    if (!leftOut.has(name) && !emptyFile) {
      fields.push([name, value]);
    }
  });
  return fields;
}

/**
 * What was typed is kept now, so the form is ready for the next; what was typed since the press stays.
 * @param {HTMLFormElement} form
 * @param {HTMLElement | null} submitter
 * @param {[string, string | File][]} typed
 */
function clear(form, submitter, typed) {
  const same = (/** @type {[string, string | File][]} */ other) =>
    other.length === typed.length && other.every(([name, value], i) => name === typed[i]?.[0] && (typeof value !== "string" || value === typed[i]?.[1]));
  if (same(fieldsOf(form, submitter))) {
    form.reset();
    forgetDraft(form);
  }
}

/**
 * @param {HTMLFormElement} form
 * @param {HTMLElement | null} submitter
 * @param {string} key
 */
function postPlainly(form, submitter, key) {
  let field = form.querySelector("input[name=key]");
  if (!(field instanceof HTMLInputElement)) {
    field = form.appendChild(Object.assign(document.createElement("input"), { type: "hidden", name: "key" }));
  }
  /** @type {HTMLInputElement} */ (field).value = key;
  try {
    sessionStorage.setItem(notKept, "1");
  } catch {
    // Then the page after this one says nothing; keepsNothing() already answers yes.
  }
  form.dataset["plain"] = "";
  form.requestSubmit(submitter);
  delete form.dataset["plain"];
}

/**
 * @param {HTMLFormElement} form
 * @param {HTMLElement | null} submitter
 */
function addressOf(form, submitter) {
  const asked = submitter?.getAttribute("formaction") ?? form.getAttribute("action") ?? location.href;
  const address = new URL(asked, location.href);
  return address.pathname + address.search;
}

/** @param {HTMLFormElement} form */
function nameOf(form) {
  return form.id || `${addressOf(form, null)} ${form.dataset["outbox"]}`;
}

/**
 * data-outbox may name fields: "Barrel 4, {value} kg/h".
 * @param {HTMLFormElement} form
 * @param {[string, string | File][]} typed
 */
function wordsOf(form, typed) {
  const text = (/** @type {string} */ name) => {
    const value = typed.find(([n]) => n === name)?.[1];
    return typeof value === "string" ? value : (value?.name ?? "");
  };
  return (form.dataset["outbox"] || "Entry").replace(/\{([^{}]+)\}/g, (_, name) => text(name)).trim();
}

/** @param {import("./store.js").Entry[]} entries */
function showKept(entries) {
  for (const form of document.querySelectorAll("form[data-outbox]")) {
    if (form instanceof HTMLFormElement) {
      const waiting = entries.filter((e) => e.state === "waiting" && e.form === nameOf(form));
      showUnder(form, waiting.map((e) => `${e.words}: kept here`));
    }
  }
}

/**
 * @param {HTMLFormElement} form
 * @param {string[]} lines
 */
function showUnder(form, lines) {
  let list = form.nextElementSibling;
  if (!list?.matches(".kept-here")) {
    if (lines.length === 0) {
      return;
    }
    list = Object.assign(document.createElement("div"), { className: "kept-here", role: "status" });
    form.after(list);
  }
  const shown = lines.slice(-shownAtOnce);
  const more = lines.length - shown.length;
  const texts = more > 0 ? [`${more} more kept here`, ...shown] : shown;
  list.replaceChildren(...texts.map((text) => Object.assign(document.createElement("p"), { textContent: text })));
}

/** Asks the browser once not to clear what is kept here when the disk runs full. */
function askToPersist() {
  try {
    if (localStorage.getItem("tickover-asked-to-persist") === null) {
      localStorage.setItem("tickover-asked-to-persist", "1");
      void navigator.storage?.persist?.().catch(() => false);
    }
  } catch {
    // No storage to ask about.
  }
}
